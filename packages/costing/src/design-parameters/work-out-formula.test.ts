import { Decimal, decimal } from '@scantling/decimals';
import { type Figure, input, recalculate, toTable } from '@scantling/figures';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FormulaError } from './formula-error.ts';
import type { FormulaScope, Measure } from './measure.ts';
import { readFormula } from './read-formula.ts';
import { workOutFormula } from './work-out-formula.ts';

const leaf = { source: { kind: 'entered', text: 'test' } } as const;
const LENGTHS: Readonly<Record<string, string>> = { length: '1200', leg: '57.15' };
const NUMBERS: Readonly<Record<string, string>> = { drawers: '4', none: '0' };

function scope(unit: 'mm' | 'in' = 'mm', numbers = NUMBERS): FormulaScope & { bare: number } {
  const found = new Map<string, Measure>();
  const made = (name: string): Measure | null => {
    const length = LENGTHS[name];
    const number = numbers[name];
    if (length !== undefined)
      return {
        kind: 'length',
        figure: input({ key: name, label: name, unit: 'mm', value: length, ...leaf }),
      };
    if (number === undefined) return null;
    const figure = input({ key: name, label: name, unit: 'ratio', value: number, ...leaf });
    return { kind: 'number', figure, isBare: false };
  };
  return {
    unit,
    bare: 0,
    noteBareLength() {
      this.bare += 1;
    },
    lookUp(name) {
      const measure = found.get(name) ?? made(name);
      if (measure === null) throw new FormulaError(`names ${name}`, 'use another');
      found.set(name, measure);
      return measure;
    },
  };
}

const measure = (formula: string, unit: 'mm' | 'in' = 'mm') =>
  workOutFormula(readFormula(formula), scope(unit));
const value = (formula: string, unit: 'mm' | 'in' = 'mm') => {
  const { kind, figure } = measure(formula, unit);
  return `${figure.value.toString()}${kind === 'length' ? ' mm' : ''}`;
};
const reason = (formula: string) => {
  try {
    measure(formula);
  } catch (error) {
    if (error instanceof FormulaError) return error.reason;
    throw error;
  }
  return null;
};

describe('working a formula out', () => {
  it('follows by hand', () => {
    expect(value('length - 2 * leg')).toBe('1085.7 mm');
    expect(value('(length - 40) / 3')).toBe(`${decimal(1160).div(3).toString()} mm`);
    expect(value('length / leg > 20 ? drawers : drawers + 1')).toBe('4');
    expect(value('length / mm(600)')).toBe('2');
    expect(value('floor(length / mm(500)) * drawers')).toBe('8');
    expect(value('ceil(length, 250)')).toBe('1250 mm');
    expect(value('round(leg, 5)')).toBe('55 mm');
    expect(value('round(2.5) + ceil(2.1) - floor(2.9)')).toBe('4');
    expect(value('max(length, in(48), 1000)')).toBe('1219.2 mm');
    expect(value('length * leg / length')).toBe('57.15 mm');
    expect(value('1 / 3 * 3')).toBe('1');
    expect(value('drawers == 4 ? 1 : 2')).toBe('1');
    expect(value('drawers != 4 ? 1 : 2')).toBe('2');
    expect(value('drawers <= 4 ? drawers < 4 ? 1 : 2 : 3')).toBe('2');
    expect(value('-drawers + 5')).toBe('1');
  });

  it("takes a bare number beside a length in the design's unit, and says so", () => {
    expect(value('length - 1', 'mm')).toBe('1199 mm');
    expect(value('length - 1', 'in')).toBe('1174.6 mm');
    expect(value('length - (23 + 5/8)', 'in')).toBe('599.925 mm');
    const told = scope('in');
    workOutFormula(readFormula('length - mm(40) * 2'), told);
    expect(told.bare).toBe(0);
    workOutFormula(readFormula('length - 2'), told);
    expect(told.bare).toBe(1);
  });

  it('keeps lengths and numbers apart', () => {
    expect(reason('length + drawers')).toContain('a length and a number');
    expect(reason('length * leg')).toContain('area');
    expect(reason('drawers / length')).toContain('divides a number by a length');
    expect(reason('length * length * length * length')).toContain('three lengths');
    expect(reason('floor(length)')).toContain('without a step');
    expect(reason('mm(length)')).toContain('a length already');
    expect(reason('drawers > 3 ? length : drawers')).toContain('a length and a number');
    expect(reason('ceil(drawers, 0)')).toContain('step');
    expect(reason('length - depth')).toContain('names depth');
  });

  it('divides by nothing only where nobody asks', () => {
    expect(reason('length / none')).toContain('divides by 0');
    expect(value('none > 0 ? length / none : length')).toBe('1200 mm');
    expect(reason('drawers > 0 ? length / none : length')).toContain('divides by 0');
  });

  it('equals plain decimal arithmetic, and its working comes to the same with other values', () => {
    type Sum = { text: string; of: (names: Readonly<Record<string, Decimal>>) => Decimal };
    const literal = fc
      .integer({ min: 1, max: 500 })
      .map((n): Sum => ({ text: `${n}`, of: () => decimal(n) }));
    const name = fc
      .constantFrom('a', 'b')
      .map((id): Sum => ({ text: id, of: (names) => names[id] ?? decimal(0) }));
    const { sum } = fc.letrec<{ sum: Sum }>((tie) => ({
      sum: fc.oneof(
        { maxDepth: 4 },
        literal,
        name,
        fc.tuple(tie('sum'), fc.constantFrom('+', '-', '*'), tie('sum')).map(
          ([x, sign, y]): Sum => ({
            text: `(${x.text}) ${sign} (${y.text})`,
            of: (names) => {
              const [p, q] = [x.of(names), y.of(names)];
              return sign === '+' ? p.plus(q) : sign === '-' ? p.minus(q) : p.times(q);
            },
          }),
        ),
        fc.tuple(tie('sum'), tie('sum')).map(
          ([x, y]): Sum => ({
            text: `max(${x.text}, ${y.text})`,
            of: (names) => Decimal.max(x.of(names), y.of(names)),
          }),
        ),
        fc.tuple(tie('sum'), fc.constantFrom('<', '>=', '>', '<=', '==', '!='), tie('sum'), literal).map(
          ([x, sign, y, z]): Sum => ({
            text: `(${x.text} ${sign} ${y.text} ? ${x.text} : ${z.text})`,
            of: (names) => {
              const order = x.of(names).comparedTo(y.of(names));
              const holds = {
                '<': order < 0,
                '<=': order <= 0,
                '>': order > 0,
                '>=': order >= 0,
                '==': order === 0,
                '!=': order !== 0,
              }[sign];
              return holds ? x.of(names) : z.of(names);
            },
          }),
        ),
      ),
    }));
    const near = (figure: Decimal | undefined, plain: Decimal) =>
      figure?.minus(plain).abs().lte(plain.abs().plus(1).times('1e-24'));
    fc.assert(
      fc.property(sum, fc.nat(99), fc.nat(99), fc.nat(99), ({ text, of }, a, b, other) => {
        fc.pre(text.length <= 400);
        const { figure } = workOutFormula(readFormula(text), scope('mm', { a: `${a}`, b: `${b}` }));
        expect(near(figure.value, of({ a: decimal(a), b: decimal(b) }))).toBe(true);
        const { ids, figures } = toTable<'it'>({ it: figure as Figure }, { withDerivations: true });
        if (figures.a === undefined) return;
        const changed = recalculate(figures, { a: other }).get(ids.it);
        expect(near(changed, of({ a: decimal(other), b: decimal(b) }))).toBe(true);
      }),
      { numRuns: 400 },
    );
  });
});
