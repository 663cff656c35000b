import AxeBuilder from '@axe-core/playwright';
import { throughAllStages } from './allStages.ts';
import { expect, test } from './appPage.ts';

for (const [theme, width] of [['Light', 1280], ['Dark', 360]] as const) {
  test(`axe finds nothing on any stage and sheet, ${theme} at ${width} px`, async ({ app, page }) => {
    test.setTimeout(400_000);
    await page.locator('summary', { hasText: 'More' }).click();
    await page.getByLabel('Paper').selectOption({ label: theme });
    await page.keyboard.press('Escape');
    await page.setViewportSize({ width, height: 900 });
    await app.settled();
    const found: string[] = [];
    await throughAllStages(page, async (name) => {
      // Framed pages have a policy of their own and are looked at where they are made.
      const { violations } = await new AxeBuilder({ page }).exclude('iframe').analyze();
      found.push(...violations.map(({ id, nodes }) => `${name}: ${id}: ${nodes.map(({ html }) => html).join(' ')}`));
    });
    expect(found).toEqual([]);
  });
}
