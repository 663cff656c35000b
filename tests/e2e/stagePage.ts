import type { Locator, Page } from '@playwright/test';
import { expect } from './appPage.ts';

/** Opens a stage that is laid over the window, at a sheet if told. */
export async function openStage(page: Page, button: RegExp, title: string, sheet?: string): Promise<Locator> {
  await page.getByRole('navigation').getByRole('button', { name: button }).first().click();
  const stage = page.getByRole('dialog', { name: title });
  await expect(stage).toBeVisible();
  if (sheet !== undefined) await stage.getByRole('tab', { name: sheet, exact: true }).click();
  return stage;
}

/** Whether a stage is no wider than the window. */
export async function isNarrow(page: Page, stage: string): Promise<boolean> {
  return page.evaluate((name) => (document.querySelector(name)?.scrollWidth ?? Infinity) <= window.innerWidth, stage);
}
