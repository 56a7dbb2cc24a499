import { defineConfig } from '@playwright/test';
import { chromium } from './tests/site/browsers.ts';

const executablePath = chromium();

export default defineConfig({
  testDir: 'tests/site',
  fullyParallel: true,
  workers: 2,
  forbidOnly: true,
  timeout: 60_000,
  // On a busy machine a message can come and go between two looks; what fails twice is wrong.
  retries: 1,
  reporter: [['list', { printSteps: false }]],
  use: {
    launchOptions: {
      ...(executablePath ? { executablePath } : {}),
      // Root in a container has no sandbox; and no browser of ours calls home.
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
        '--no-first-run',
      ],
    },
  },
});
