import type { Locator } from '@playwright/test';
import { expect } from './appPage.ts';

/** Presses Enter on a button once it can be pressed: unlike a click, a key is not held back while a button is disabled, and goes nowhere. */
export async function pressEnter(button: Locator): Promise<void> {
  await expect(button).toBeEnabled();
  await button.press('Enter');
}
