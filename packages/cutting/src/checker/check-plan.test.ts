import { describe, expect, it } from 'vitest';
import type { CuttingPlan, Layout } from '../cutting-plan.ts';
import type { CuttingInstance } from '../instance/cutting-instance.ts';
import { checkPlan } from './check-plan.ts';
import { bar, lastBar, ofSheets, ofSticks, ply, sheets, sticks } from './plans-by-hand.ts';

const withLayout = (plan: CuttingPlan, layout: Layout, at = 0): CuttingPlan => ({
  ...plan,
  layouts: plan.layouts.map((one, index) => (index === at ? layout : one)),
});

describe('a plan that holds', () => {
  it('passes', () => {
    expect(checkPlan(sticks, ofSticks)).toEqual([]);
    expect(checkPlan(sheets, ofSheets)).toEqual([]);
  });

  it('may waste less than a kerf at an end', () => {
    const instance = { ...sticks, trim: 0, parts: [{ id: 'rail', length: 499, quantity: 2 }] };
    const layout = {
      ...bar,
      cuts: [
        { part: 'rail', x: '0' },
        { part: 'rail', x: '501' },
      ],
      offcuts: [],
    };
    const plan = { ...ofSticks, cost: '7.5', bound: '7.5', layouts: [layout] };
    expect(checkPlan({ ...instance, kerf: 2 }, plan)).toEqual([]);
    expect(checkPlan({ ...instance, kerf: '2.000001' }, plan)).toEqual([
      'layout 1: no kerf between "rail" and "rail"',
    ]);
  });
});

describe('a broken plan is refused:', () => {
  const cases: [string, CuttingInstance, CuttingPlan, string][] = [
    [
      'a part is missing',
      sticks,
      { ...ofSticks, cost: '7.5', bound: '7.5', layouts: [bar] },
      '2 of "rail" are cut, 3 wanted',
    ],
    [
      'a part too many',
      sticks,
      { ...ofSticks, layouts: [{ ...bar, count: 2 }] },
      '4 of "rail" are cut, 3 wanted',
    ],
    [
      'a part nobody asked for',
      sticks,
      withLayout(ofSticks, { ...bar, cuts: [...bar.cuts, { part: 'leg', x: '816' }] }),
      'layout 1: there is no part "leg"',
    ],
    [
      'stock that does not exist',
      sticks,
      withLayout(ofSticks, { ...bar, stock: 'beam' }),
      'layout 1: there is no stock "beam"',
    ],
    [
      'more stock than there is',
      { ...sticks, stock: [{ id: 'bar', length: 1000, cost: '7.50', available: 1 }] },
      ofSticks,
      '2 of "bar" are used, 1 available',
    ],
    [
      'a part in the trim',
      sticks,
      withLayout(ofSticks, { ...lastBar, cuts: [{ part: 'rail', x: '9' }] }, 1),
      'layout 2: "rail" leaves "bar"',
    ],
    [
      'a part beyond the end',
      sticks,
      withLayout(
        ofSticks,
        { ...lastBar, cuts: [{ part: 'rail', x: '591' }], offcuts: [{ x: '10', length: '578' }] },
        1,
      ),
      'layout 2: "rail" leaves "bar"',
    ],
    [
      'parts over one another',
      sticks,
      withLayout(ofSticks, {
        ...bar,
        cuts: [
          { part: 'rail', x: '10' },
          { part: 'rail', x: '200' },
        ],
      }),
      'layout 1: no kerf between "rail" and "rail"',
    ],
    [
      'a kerf too narrow',
      sticks,
      withLayout(ofSticks, {
        ...bar,
        cuts: [
          { part: 'rail', x: '10' },
          { part: 'rail', x: '412.999999' },
        ],
      }),
      'layout 1: no kerf between "rail" and "rail"',
    ],
    [
      'an offcut longer than what is left',
      sticks,
      withLayout(ofSticks, { ...bar, offcuts: [{ x: '816', length: '175' }] }),
      'layout 1: the offcut at 816 leaves "bar"',
    ],
    [
      'an offcut that is not said',
      sticks,
      withLayout(ofSticks, { ...bar, offcuts: [] }),
      'layout 1: what lies at the end is in no offcut',
    ],
    [
      'a length that is none',
      sticks,
      withLayout(ofSticks, { ...lastBar, cuts: [{ part: 'rail', x: 'left' }] }, 1),
      'layout 2: "rail" leaves "bar"',
    ],
    ['a count of none', sticks, withLayout(ofSticks, { ...bar, count: 0 }), 'layout 1: its count is 0'],
    ['a wrong cost', sticks, { ...ofSticks, cost: '14' }, 'it says it costs 14, its stock costs 15'],
    ['a bound above the cost', sticks, { ...ofSticks, bound: '16' }, 'it costs less than its bound of 16'],
    ['optimal above a gap', sticks, { ...ofSticks, bound: '14' }, 'it calls itself optimal above a gap'],
    [
      'a part turned against its grain',
      sheets,
      withLayout(ofSheets, {
        ...ply,
        cuts: [...ply.cuts.slice(1), { part: 'door', x: '0', y: '0', turned: true }],
      }),
      'layout 1: "door" is turned against its grain',
    ],
    [
      'a part beyond the edge',
      sheets,
      withLayout(ofSheets, {
        ...ply,
        cuts: [...ply.cuts.slice(0, 2), { part: 'shelf', x: '0', y: '351', turned: true }],
      }),
      'layout 1: "shelf" leaves "ply"',
    ],
    [
      'an offcut over a part',
      sheets,
      withLayout(ofSheets, { ...ply, offcuts: [{ x: '470', y: '304', length: '500', width: '296' }] }),
      'layout 1: no kerf between "shelf" and the offcut at 470, 304',
    ],
    [
      'an offcut without a size',
      sheets,
      withLayout(ofSheets, { ...ply, offcuts: [{ x: '484', y: '304', length: '0', width: '296' }] }),
      'layout 1: the offcut at 484, 304 has no size',
    ],
    [
      'more stages than allowed',
      { ...sheets, stages: 1, firstCut: 'rip' },
      ofSheets,
      'layout 1: 1 stages of cuts do not free every part',
    ],
  ];

  it.each(cases)('%s', (_, instance, plan, fault) => {
    expect(checkPlan(instance, plan)).toContain(fault);
  });

  it('no cuts from edge to edge free five parts around one another', () => {
    // The pinwheel: four 60 x 40 parts around one of 20 x 20 on a 100 x 100 sheet.
    const instance: CuttingInstance = {
      kind: '2d-guillotine',
      kerf: 0,
      stock: [{ id: 'ply', length: 100, width: 100, cost: 1 }],
      parts: [
        { id: 'arm', length: 60, width: 40, quantity: 4, rotatable: true },
        { id: 'hub', length: 20, width: 20, quantity: 1 },
      ],
    };
    const layout: Layout = {
      stock: 'ply',
      count: 1,
      cuts: [
        { part: 'arm', x: '0', y: '0' },
        { part: 'arm', x: '60', y: '0', turned: true },
        { part: 'arm', x: '40', y: '60' },
        { part: 'arm', x: '0', y: '40', turned: true },
        { part: 'hub', x: '40', y: '40' },
      ],
      offcuts: [],
    };
    const plan = { ...ofSticks, cost: '1', bound: '1', layouts: [layout] };
    expect(checkPlan(instance, plan)).toEqual([
      'layout 1: no cuts from edge to edge free every part and offcut',
    ]);
    const fewer = {
      ...instance,
      parts: [{ id: 'arm', length: 60, width: 40, quantity: 2, rotatable: true }],
    };
    expect(checkPlan(fewer, withLayout(plan, { ...layout, cuts: layout.cuts.slice(0, 2) }))).toEqual([]);
  });

  it('values and wishes that do not add up', () => {
    const instance: CuttingInstance = {
      ...sticks,
      objective: 'max-value',
      parts: [{ id: 'rail', length: 400, quantity: 2, value: 5 }],
    };
    const plan = { ...ofSticks, cost: '7.5', value: '10', bound: '10', layouts: [bar] };
    expect(checkPlan(instance, plan)).toEqual([]);
    expect(checkPlan(instance, { ...plan, value: '11' })).toContain(
      'it says it is worth 11, its parts are worth 10',
    );
    expect(checkPlan(instance, { ...plan, bound: '9' })).toContain('it is worth more than its bound of 9');
    const wished: CuttingInstance = {
      ...sticks,
      preferences: { pricePerKindOfStock: 2, usableOffcuts: { leastLength: 500, worth: '0.001' } },
    };
    // 15 + 2 for one kind - 0.577 for the offcut that reaches 500.
    const weighed = { ...ofSticks, weighed: '16.423', bound: '16.423' };
    expect(checkPlan(wished, weighed)).toEqual([]);
    expect(checkPlan(wished, { ...weighed, weighed: '16' })).toContain(
      'it says it weighs 16, it weighs 16.423',
    );
  });
});
