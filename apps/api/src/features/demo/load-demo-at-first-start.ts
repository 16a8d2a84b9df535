import type { StartJob } from '../../start-job.ts';
import { isHalfLoaded, loadDemo } from './load-demo.ts';

/**
 * Loads the demo into a database that nobody has used: no person, no workshop, and no set-up link, which every start
 * without people leaves behind. So a demo that was removed does not come back. A load that was cut off is begun anew.
 */
export const loadDemoAtFirstStart: StartJob = {
  name: 'load-demo-at-first-start',
  run: async ({ config, database }) => {
    if (!config.hasDemo) return [];
    const used = await Promise.all([
      database.user.count(),
      database.workshop.count(),
      database.setUpLink.count(),
    ]);
    const isFirst = used.every((count) => count === 0);
    if (!isFirst && !(await isHalfLoaded(database))) return [];
    const { content } = await loadDemo(database, { clock: () => new Date(), config });
    const { designs, prices, tools, clients } = content;
    return [
      `The demo workshop, all of it invented, is loaded: ${designs} designs, ${prices} prices, ${tools} tools, ${clients} clients.`,
    ];
  },
};
