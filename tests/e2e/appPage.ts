import { expect, test as base, type Locator, type Page } from '@playwright/test';

/** What the browser says of the service worker that these tests go without; app-offline.spec.ts has it. */
const BLOCKED = 'Service Worker registration blocked by Playwright';

/** The page on its first visit, with every complaint of its console collected. */
export class AppPage {
  readonly complaints: string[] = [];

  constructor(readonly page: Page) {
    page.on('console', (message) => {
      if (message.text() === BLOCKED) return;
      if (message.type() === 'error' || message.type() === 'warning') this.complaints.push(message.text());
    });
    page.on('pageerror', (error) => this.complaints.push(error.message));
  }

  async open(): Promise<void> {
    await this.page.goto('./');
    await this.settled();
  }

  /** Opens the demo's coat that is laid by its plan; a first visit opens on the recorded one. */
  async openPlanned(): Promise<void> {
    await this.chooseCoat('Cross coat as planned');
  }

  /** Until the film is laid, judged and its cures are tried. */
  async settled(): Promise<void> {
    await expect(this.sentence).toContainText('of the panel', { timeout: 90_000 });
    await expect(this.page.locator('.working')).toHaveText('', { timeout: 90_000 });
  }

  get sentence(): Locator {
    return this.page.getByTestId('sentence');
  }

  get wetMean(): Locator {
    return this.page.getByTestId('wet-mean');
  }

  async stage(name: 'Part' | 'Mix' | 'Air' | 'Gun' | 'Strokes'): Promise<void> {
    // By the start of its name: a stage with a doubt has a second button beside it, which leads there.
    await this.page.getByRole('navigation').getByRole('button', { name: new RegExp(`^${name}`) }).click();
  }

  /** The instructor's stage, over the window. */
  async openDemonstrations(): Promise<Locator> {
    await this.page.getByRole('navigation').getByRole('button', { name: /Demonstrations/ }).click();
    return this.page.getByRole('dialog', { name: 'Demonstrations' });
  }

  field(name: string): Locator {
    return this.page.getByRole('textbox', { name, exact: true });
  }

  async chooseCoat(name: string): Promise<void> {
    await this.page.getByRole('combobox', { name: 'Coat', exact: true }).selectOption({ label: name });
    await this.settled();
  }

  /** Drops a text file on the window. */
  async drop(name: string, text: string): Promise<void> {
    const data = await this.page.evaluateHandle(
      ([fileName, content]) => {
        const transfer = new DataTransfer();
        transfer.items.add(new File([content], fileName, { type: 'text/plain' }));
        return transfer;
      },
      [name, text] as const,
    );
    await this.page.locator('.sheet').dispatchEvent('drop', { dataTransfer: data });
  }
}

/** A test with the app open; at its end nothing may have complained on the console. */
export const test = base.extend<{ app: AppPage }>({
  app: async ({ page }, use) => {
    const app = new AppPage(page);
    await app.open();
    await use(app);
    expect(app.complaints).toEqual([]);
  },
});

export { expect };
