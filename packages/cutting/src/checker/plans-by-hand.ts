import type { CuttingPlan, Layout } from '../cutting-plan.ts';
import type { CuttingInstance } from '../instance/cutting-instance.ts';

// Worked by hand: a 1000 stick with 10 off each end and 3 kerf holds 400 + 3 + 400 + 3 and leaves 174.
export const sticks: CuttingInstance = {
  kind: '1d',
  kerf: 3,
  trim: 10,
  stock: [{ id: 'bar', length: 1000, cost: '7.50', available: 2 }],
  parts: [{ id: 'rail', length: 400, quantity: 3 }],
};
export const bar: Layout = {
  stock: 'bar',
  count: 1,
  cuts: [
    { part: 'rail', x: '10' },
    { part: 'rail', x: '413' },
  ],
  offcuts: [{ x: '816', length: '174' }],
};
export const lastBar: Layout = {
  stock: 'bar',
  count: 1,
  cuts: [{ part: 'rail', x: '10' }],
  offcuts: [{ x: '413', length: '577' }],
};
export const ofSticks: CuttingPlan = {
  status: 'optimal',
  cost: '15',
  bound: '15',
  gap: '0',
  endedBy: 'proof',
  layouts: [bar, lastBar],
};

// Two doors with the grain side by side along x, a shelf across above the first: all freed by cuts from edge to edge.
export const sheets: CuttingInstance = {
  kind: '2d-guillotine',
  kerf: 4,
  stock: [{ id: 'ply', length: 1000, width: 600, cost: 40 }],
  parts: [
    { id: 'door', length: 480, width: 300, quantity: 2 },
    { id: 'shelf', length: 250, width: 470, quantity: 1, rotatable: true },
  ],
};
export const ply: Layout = {
  stock: 'ply',
  count: 1,
  cuts: [
    { part: 'door', x: '0', y: '0' },
    { part: 'door', x: '484', y: '0' },
    { part: 'shelf', x: '0', y: '304', turned: true },
  ],
  offcuts: [{ x: '484', y: '304', length: '516', width: '296' }],
};
export const ofSheets: CuttingPlan = { ...ofSticks, cost: '40', bound: '40', layouts: [ply] };
