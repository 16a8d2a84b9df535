import { type Figure, recalculate, toTable } from '@scantling/figures';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CostingInputError } from '../input-error.ts';
import { type CostColumn, costSheet } from './cost-sheet.ts';
import type { CostSheetInput } from './cost-sheet-input.ts';
import { sampleOak, sampleOffer, sampleSheet } from './sample-sheet.ts';

const text = (figure: Figure | null | undefined, places = 4) =>
  figure?.value.toDecimalPlaces(places).toString();

function columns(changes: Partial<CostSheetInput> = {}): [CostColumn, CostColumn] {
  const [one, five] = costSheet({ ...sampleSheet, ...changes }).columns;
  if (!one || !five) throw new Error('two columns were asked for');
  return [one, five];
}

describe('the cost sheet', () => {
  it('follows by hand: 3 bd ft at yield 1/2, screws by the pack, hours, machine and overhead', () => {
    const [one, five] = columns();
    const [oak, screws] = one.materials;
    // 36 in x 12 in of 4/4 is 3 bd ft; at a yield of 0.5, 6 bd ft at 6.00.
    expect([text(oak?.used), text(oak?.bought), text(oak?.usedCost)]).toEqual(['6', '6', '36']);
    // 20 of a pack of 50 at 5.00 are 2.00 used of 5.00 bought.
    expect([
      text(screws?.used),
      text(screws?.bought),
      text(screws?.usedCost),
      text(screws?.boughtCost),
    ]).toEqual(['0.4', '1', '2', '5']);
    // Labour 24 x 1.25 / 0.75 = 40 an hour for 3 h; saw 1 + 0.20 an hour for 1.5 h; overheads 5 and 1 an hour.
    const { classes } = one;
    expect([text(classes.primeCost), text(classes.machines), text(classes.worksCost)]).toEqual([
      '158',
      '1.8',
      '174.8',
    ]);
    // (174.80 + 3.00) x 1.1 + 30 = 225.58
    expect(text(classes.costOfProduction)).toBe('225.58');
    expect(text(one.price.netPrice)).toBe('300.77');
    // (300.77 - 105.58) / (3 + 2) h
    expect(text(one.price.hourlyEarnings)).toBe('39.038');
    // materials 38, saw at 0.20 an hour for power, freight 30
    expect(text(one.price.floorPrice)).toBe('68.3');
    expect(five.perPiece.cost.value.lt(one.perPiece.cost.value)).toBe(true);
    // 36 x 12 x 3/4 in nearly (19 mm): 0.9144 x 0.3048 x 0.019 m3 x 700
    expect(text(costSheet(sampleSheet).weight.mass)).toBe('3.7068');
  });

  it('keeps charged + offcut to stock + loss = bought on either basis, for any price and quantity', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 900 }),
        fc.integer({ min: 1, max: 24 }),
        fc.constantFrom('shop', 'commission'),
        (pieces, cents, pack, basis) => {
          const oak = {
            ...sampleOak,
            offers: [
              sampleOffer({
                code: 'OAK-4',
                packSize: String(pack),
                breaks: [
                  { from: '0', amount: String(cents / 100) },
                  { from: '60', amount: String(cents / 125) },
                ],
              }),
            ],
          };
          const sheet = costSheet({
            ...sampleSheet,
            basis: basis as 'shop' | 'commission',
            quantities: [pieces],
            materials: [oak, ...sampleSheet.materials.slice(1)],
          });
          for (const line of sheet.columns[0]?.materials ?? []) {
            const paid = line.charged.value.plus(line.offcutValue.value).plus(line.loss.value);
            expect(paid.minus(line.boughtCost.value).abs().lt('1e-20')).toBe(true);
            expect(line.bought.value.gte(line.used.value)).toBe(true);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('never asks a lower least bill for more pieces', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 50, max: 99 }),
        fc.constantFrom('all-units', 'incremental'),
        (pieces, percent, kind) => {
          const breaks = [
            { from: '0', amount: '6' },
            { from: '25', amount: String((6 * percent) / 100) },
          ];
          const oak = {
            ...sampleOak,
            offers: [sampleOffer({ code: 'OAK-4', breakKind: kind as 'all-units' | 'incremental', breaks })],
          };
          const sheet = costSheet({
            ...sampleSheet,
            quantities: [pieces, pieces + 1],
            materials: [oak, ...sampleSheet.materials.slice(1)],
          });
          const bills = sheet.columns.map((column) => column.materials[0]?.boughtCost.value);
          expect(bills[1]?.gte(bills[0] ?? 0)).toBe(true);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('gives every value back from its leaves', () => {
    const [one] = columns();
    const { figures } = toTable(
      { cost: one.classes.costOfProduction, price: one.price.netPrice, floor: one.price.floorPrice },
      { withDerivations: true },
    );
    const again = recalculate(figures);
    for (const node of Object.values(figures)) expect(again.get(node.id)?.toString()).toBe(node.value);
    expect(Object.keys(figures)).toContain('price/yard/OAK-4/board-foot/0');
  });

  it('charges all that is bought on commission, and leftovers go to stock at nil', () => {
    const [one] = columns({ basis: 'commission' });
    const screws = one.materials[1];
    expect([text(screws?.charged), text(screws?.offcutValue), text(screws?.loss)]).toEqual(['5', '0', '0']);
  });

  it('takes tax that cannot be recovered, and another currency, into the cost', () => {
    const offer = sampleOffer({
      code: 'OAK-4',
      currency: 'EUR',
      breaks: [{ from: '0', amount: '12' }],
      tax: { isIncluded: true, rate: '0.2', recoverableShare: '0.5' },
      exchange: { to: 'USD', rate: '1.1', onDate: '2026-05-30', source: 'rate of 2026-05-30' },
    });
    const [one] = columns({
      materials: [{ ...sampleOak, offers: [offer] }, ...sampleSheet.materials.slice(1)],
    });
    // net 10 + half of the tax of 2 = 11 EUR = 12.10 USD a board foot
    expect(text(one.materials[0]?.usedCost)).toBe('72.6');
    expect(one.materials[0]?.usedCost.currency).toBe('USD');
  });

  it('tells labour, machine and elapsed time apart', () => {
    const [one, five] = columns();
    // 1 h setup and 2 h a piece; the saw runs half of it; the glue dries 12 h once a batch.
    expect(
      [one, five].map(({ hours }) => [hours.work, hours.machine, hours.elapsed].map((h) => text(h))),
    ).toEqual([
      ['3', '1.5', '12'],
      ['11', '5.5', '12'],
    ]);
  });

  it('recovers overhead as planned, or as the year went where the terms say so', () => {
    const { rates, terms } = sampleSheet;
    // 7,200 spent over 900 hours are 8.00 an hour, in place of the planned 6,000 over 1,200 = 5.00.
    const workshopOverhead = { ...rates.workshopOverhead, actual: { amount: '7200', base: '900' } };
    const at = (overheadAt: 'planned' | 'actual') =>
      columns({ rates: { ...rates, workshopOverhead }, terms: { ...terms, overheadAt } })[0].classes;
    expect(text(at('planned').workshopOverhead)).toBe('15');
    expect(text(at('actual').workshopOverhead)).toBe('24');
    // The other pool's year is not known, so it stays as planned.
    expect(text(at('actual').administrationOverhead)).toBe('3');
  });

  it('takes an entered price for the batch, or for each piece where it says so', () => {
    const prices = (per?: 'batch' | 'piece') =>
      columns({
        terms: { ...sampleSheet.terms, policy: { kind: 'entered', price: '400', ...(per ? { per } : {}) } },
      }).map((column) => text(column.price.netPrice));
    expect(prices()).toEqual(['400', '400']);
    expect(prices('batch')).toEqual(['400', '400']);
    expect(prices('piece')).toEqual(['400', '2000']);
  });

  it('prices dimensioned lumber by the metre, by its board feet and by its volume', () => {
    const bill = {
      ...sampleSheet.bill,
      components: [],
      parts: sampleSheet.bill.parts.map((part) => ({ ...part, width: '88.9', thickness: '38.1' })),
    };
    const used = (unit: 'linear-foot' | 'board-foot' | 'thousand-board-feet' | 'cubic-metre') => {
      const stick = {
        ...sampleOak,
        form: 'dimensioned-lumber',
        yieldFactor: '1',
        thickness: '38.1',
        width: '88.9',
        length: '2438.4',
        // A 2x4 of 8 ft is 5 1/3 board feet (American Softwood Lumber Standard PS 20: nominal sizes).
        boardContent: '5.333333333333333333333333333333333',
        offers: [sampleOffer({ code: 'OAK-4', unit })],
      } as const;
      const [one] = columns({ bill, materials: [stick] });
      return text(one.materials[0]?.used, 6);
    };
    // A part of 3 ft: 3/8 of the stick.
    expect(used('linear-foot')).toBe('3');
    expect(used('board-foot')).toBe('2');
    expect(used('thousand-board-feet')).toBe('0.002');
    expect(used('cubic-metre')).toBe('0.003097');
  });

  it('names the field and the mend where something is missing', () => {
    const thick = {
      ...sampleSheet.bill,
      parts: sampleSheet.bill.parts.map((part) => ({ ...part, thickness: '30' })),
    };
    const faults: [Partial<CostSheetInput>, string][] = [
      [{ bill: thick }, 'bill.parts.0.thickness'],
      [{ materials: sampleSheet.materials.slice(1) }, 'bill.parts.0.material'],
      [{ quantities: [] }, 'quantities'],
      [{ terms: { ...sampleSheet.terms, policy: { kind: 'margin', margin: '1' } } }, 'terms.policy.margin'],
    ];
    for (const [changes, field] of faults) {
      try {
        costSheet({ ...sampleSheet, ...changes });
        expect.unreachable(field);
      } catch (error) {
        expect(error).toBeInstanceOf(CostingInputError);
        expect((error as CostingInputError).field).toBe(field);
      }
    }
  });
});
