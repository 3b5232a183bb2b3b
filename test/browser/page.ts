import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';

export const wide = { width: 1600, height: 1000 } as const;
export const narrow = { width: 390, height: 844 } as const;

/** Patience with one thing on the page, ms. */
const patience = 15_000;

/** What a visit did that a page of ours must never do. */
export interface Watched {
  /** Requests to anywhere but the server. */
  readonly elsewhere: string[];
  /** Errors in the console, scripts that threw, breaches of the content policy. */
  readonly faults: string[];
}

export interface Visit extends Watched {
  readonly context: BrowserContext;
  readonly page: Page;
}

/** Is the request one to this server? What the page makes itself (`blob:`, `data:`) goes nowhere. */
const staysHere = (url: string, address: string): boolean =>
  url.startsWith(`${address}/`) || url.startsWith(`blob:${address}/`) || /^(data|about):/.test(url);

/** A browser of its own, at the address; everything it asks for and complains of is kept. */
export const visit = async (browser: Browser, address: string, options: BrowserContextOptions = {}): Promise<Visit> => {
  const context = await browser.newContext({
    baseURL: address,
    viewport: wide,
    reducedMotion: 'no-preference',
    locale: 'en-GB',
    ...options,
  });
  context.setDefaultTimeout(patience);
  const elsewhere: string[] = [];
  const faults: string[] = [];
  await context.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      console.error(`content policy breached: ${event.violatedDirective} ${event.blockedURI} ${event.sourceFile}`);
    });
  });
  context.on('request', (request) => {
    if (!staysHere(request.url(), address)) elsewhere.push(request.url());
  });
  context.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  context.on('weberror', (error) => faults.push(error.error().message));
  const page = await context.newPage();
  return { context, page, elsewhere, faults };
};

/** Waits until the page says that all is saved, and that is the last edit's saving. */
export const untilSaved = async (page: Page): Promise<void> => {
  // An edit waits for a pause in typing before it is sent, and says so at once.
  await page.getByText('Saving …').waitFor({ state: 'hidden' });
  await page.getByText(/^Saved at/).waitFor();
};
