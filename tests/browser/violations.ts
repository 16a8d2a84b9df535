import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

// Rules of WCAG 2.2 at levels A and AA, checked by axe-core, a general-purpose accessibility engine.
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What the page breaks of WCAG, rule by rule with the first place. */
export async function violations(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const engine = Reflect.get(window, 'axe');
    // The component library's announcer is named after the button that was pressed, which may have left the page.
    const spoken = { exclude: [['[data-live-announcer]']] };
    const { violations: found } = await engine.run(spoken, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'],
    });
    return found.map(
      (rule: { id: string; nodes: { html: string }[] }) => `${rule.id}: ${rule.nodes[0]?.html.slice(0, 160)}`,
    );
  });
}
