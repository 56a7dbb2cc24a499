/** Finds the browsers for the site's tests, or installs them, and says plainly what it did. */
import { execFileSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { pathToFileURL } from 'node:url';

function onPath(names: readonly string[]): string | undefined {
  const folders = (process.env['PATH'] ?? '').split(delimiter);
  const candidates = names.flatMap((name) => folders.map((folder) => join(folder, name)));
  return candidates.find((candidate) => {
    try {
      accessSync(candidate, constants.X_OK);
      return true;
    } catch {
      return false;
    }
  });
}

/** A Chromium or Chrome that is installed; without one, Playwright's own is used. */
export const chromium = () =>
  process.env['CHROMIUM'] ??
  onPath(['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome']);
export const firefox = () => process.env['FIREFOX'] ?? onPath(['firefox-esr', 'firefox']);

function runs(command: string, args: readonly string[]): boolean {
  try {
    execFileSync(command, args, {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
    return true;
  } catch {
    return false;
  }
}

const aptInstalls = (name: string) =>
  process.getuid?.() === 0 &&
  runs('apt-get', ['update', '-qq']) &&
  runs('apt-get', ['install', '-y', '-qq', '--no-install-recommends', name]);

function prepare(): void {
  if (chromium()) console.info(`Chromium: using ${chromium()}`);
  else if (runs('npx', ['playwright', 'install', '--with-deps', 'chromium']))
    console.info("Chromium: installed Playwright's own");
  else if (aptInstalls('chromium')) console.info(`Chromium: installed by the system's package manager, ${chromium()}`);
  else {
    console.error('Chromium: none found, and none could be installed. Install Chromium or Chrome and run this again.');
    process.exit(1);
  }
  if (firefox()) console.info(`Firefox: using ${firefox()}`);
  else if (aptInstalls('firefox-esr')) console.info(`Firefox: installed by the system's package manager, ${firefox()}`);
  else console.info('Firefox: none found and none could be installed. THE FIREFOX JOURNEY IS LEFT OUT of this run.');
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) prepare();
