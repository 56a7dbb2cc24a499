/** What every page runs, with or without a calculator: the light or dark choice. */
import { startThemeChoice } from './theme.ts';

startThemeChoice();
