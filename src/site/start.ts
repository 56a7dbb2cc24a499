/** What every page runs, with or without a calculator: the light or dark choice, and the frame in its address goes along. */
import { isFrameBrought, loadFrame } from '~/island/frame-fill.ts';
import { startThemeChoice } from './theme.ts';

startThemeChoice();
// Pages that show a whole frame carry it by themselves. The rule for links comes with the script: see `src/frame/carry.ts`.
if (isFrameBrought() && !document.querySelector('.desk')) void loadFrame();
