import { defineConfig } from '@playwright/test';
import { browserArgs, findBrowser } from './browser.ts';

const PORT = 4199;

export default defineConfig({
  testDir: '.',
  testMatch: process.env['PICTURES'] === '1' ? 'pictures.shoot.ts' : '**/*.spec.ts',
  outputDir: '../test-results',
  // The app has a page, a worker and a service worker of its own: one browser keeps two cores busy.
  workers: 1,
  timeout: 90_000,
  // A busy machine is no failure, and a hang still is.
  expect: { timeout: 20_000 },
  forbidOnly: true,
  reporter: [['list']],
  use: {
    baseURL: `http://127.0.0.1:${PORT}/`,
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    deviceScaleFactor: 2,
    permissions: ['camera'],
    locale: 'en-GB',
    timezoneId: 'Europe/Berlin',
    launchOptions: { executablePath: findBrowser(), args: [...browserArgs] },
  },
  webServer: {
    // The built app, as any static host would serve it.
    command: `npx vite preview --host 127.0.0.1 --port ${PORT} --strictPort`,
    cwd: '..',
    url: `http://127.0.0.1:${PORT}/`,
    reuseExistingServer: false,
  },
});
