import type { Page } from '@playwright/test';
import { expect } from './appPage.ts';

/** Stages whose form stands in the window, with a field that each shows. */
const FORMS = ['Part', 'Mix', 'Air', 'Gun', 'Strokes'];
/** Stages that are laid over the window. */
const OVER = ['Today', 'Scheme', 'Set-ups', 'Practice', 'Demonstrations', 'Survey', 'Log'];

/** Opens every stage in turn, and every sheet of those that have some; `look` is called at each. */
export async function throughAllStages(page: Page, look: (name: string) => Promise<void> = () => Promise.resolve()): Promise<void> {
  const stages = page.getByRole('navigation', { name: 'Stages of the work' });
  for (const name of FORMS) {
    await stages.getByRole('button', { name: new RegExp(`^${name}`) }).first().click();
    await expect(page.getByText('Fetching this form…')).toHaveCount(0);
    await expect(page.locator('.form-column').locator('input, select').first()).toBeVisible();
    await look(name);
  }
  for (const name of OVER) {
    await stages.getByRole('button', { name: new RegExp(`^${name}`) }).first().click();
    const stage = page.getByRole('dialog', { name });
    await expect(stage).toBeVisible();
    await look(name);
    const tabs = stage.getByRole('tab');
    for (let i = 0; i < (await tabs.count()); i++) {
      await tabs.nth(i).click();
      await expect(tabs.nth(i)).toHaveAttribute('aria-selected', 'true');
      await look(`${name}, ${await tabs.nth(i).innerText()}`);
    }
    await stage.getByRole('button', { name: /^(Close|Back)/ }).first().click();
    await expect(stage).toHaveCount(0);
  }
}
