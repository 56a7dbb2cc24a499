/**
 * Speed, as ratios measured in one run; nothing here can fail a build. First the computation against a general package
 * (`stepped-arm.ts`). Then, for each guide of the built site, the time from one change of a value to all results, steps,
 * figure and plots redrawn, against a frame of the screen (16 ms).
 */
import { chromium } from '@playwright/test';
import { readdirSync } from 'node:fs';
import { resolve, sep } from 'node:path';
import { listen, staticServer } from '../../src/open-from-disk/serve.ts';
import { chromium as installed } from '../site/browsers.ts';
import { benchSteppedArm } from './stepped-arm.ts';
import { benchWholeFrame } from './whole-frame.ts';

benchSteppedArm();

const FRAME = 16;
const CHANGES = 60;
const dist = resolve('dist');
benchWholeFrame(dist);
const guides = readdirSync(dist, { recursive: true })
  .map((file) => String(file).split(sep).join('/'))
  .filter((file) => file.endsWith('.html') && file.includes('/') && !file.startsWith('formulas/'))
  .sort();

const server = staticServer(dist);
const address = `http://localhost:${await listen(server, 0)}/`;
const executablePath = installed();
const browser = await chromium.launch({
  ...(executablePath ? { executablePath } : {}),
  args: ['--no-sandbox', '--disable-gpu'],
});
const tab = await browser.newPage();

for (const guide of guides) {
  await tab.goto(address + guide);
  const found = await tab.evaluate(async (changes) => {
    const median = (numbers: number[]) => [...numbers].sort((a, b) => a - b)[Math.floor(numbers.length / 2)] ?? 0;
    const measured: { id: string; median: number; slowest: number }[] = [];
    for (const calculator of document.querySelectorAll<HTMLElement>('[data-calculator]')) {
      const slider = calculator.querySelector<HTMLInputElement>('.fields input[type=range]');
      if (!slider) continue;
      const times: number[] = [];
      // Around the default, where the values make sense together and everything is computed and drawn.
      const middle = Number(slider.value);
      for (let i = 0; i < changes; i++) {
        slider.value = String(middle + ((i % 2) * 2 - 1) * (1 + (i % 3)));
        const started = performance.now();
        // The island redraws in a microtask or a frame: wait for the document to change, then force layout.
        const redrawn = new Promise<void>((done) => {
          const observer = new MutationObserver(() => {
            observer.disconnect();
            done();
          });
          observer.observe(calculator.querySelector('.calc') ?? calculator, {
            attributes: true,
            subtree: true,
            childList: true,
            characterData: true,
          });
          setTimeout(done, 200);
        });
        slider.dispatchEvent(new Event('input', { bubbles: true }));
        await redrawn;
        void calculator.offsetHeight;
        times.push(performance.now() - started);
        await new Promise((done) => requestAnimationFrame(done));
      }
      measured.push({ id: calculator.dataset['calculator'] ?? '', median: median(times), slowest: Math.max(...times) });
    }
    return measured;
  }, CHANGES);
  for (const { id, median, slowest } of found) {
    console.info(
      `${guide} ${id}: change to redraw, median ${median.toFixed(1)} ms = ${(median / FRAME).toFixed(2)} of a frame; slowest of ${CHANGES} ${(slowest / FRAME).toFixed(2)}`,
    );
  }
}
await browser.close();
server.close();
