import type { Locator, Page } from '@playwright/test';
import { expect } from './appPage.ts';

/** Stops on the way from one end of the page to the other, and more than there are. */
const MOST_STOPS = 500;

/** Goes on with Tab until `target` has the focus, as somebody does who has no mouse. */
export async function tabTo(page: Page, target: Locator): Promise<void> {
  await expect(target).toBeVisible();
  for (let i = 0; i < MOST_STOPS; i++) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab does not lead to ${String(target)}`);
}

/** Goes to a button by Tab and presses it. */
export async function tabAndPress(page: Page, button: Locator, key = 'Enter'): Promise<void> {
  await expect(button).toBeEnabled();
  await tabTo(page, button);
  await page.keyboard.press(key);
}

/** Goes to a field by Tab, types over what stands there, and leaves it. */
export async function tabAndType(page: Page, field: Locator, text: string): Promise<void> {
  await tabTo(page, field);
  await page.keyboard.press('ControlOrMeta+a');
  await page.keyboard.type(text);
  await page.keyboard.press('Tab');
}
