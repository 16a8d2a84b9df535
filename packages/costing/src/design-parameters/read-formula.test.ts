import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expressionText } from './expression.ts';
import { FormulaError } from './formula-error.ts';
import { readFormula } from './read-formula.ts';

function refused(text: string): FormulaError {
  try {
    readFormula(text);
  } catch (error) {
    if (error instanceof FormulaError) return error;
    throw error;
  }
  throw new Error(`"${text}" was taken`);
}

describe('reading a formula', () => {
  it('takes arithmetic, conditions and the functions, with typographic signs too', () => {
    const text = (formula: string) => expressionText(readFormula(formula));
    expect(text('length-2*leg')).toBe('length - 2 * leg');
    expect(text('length − 2 × leg')).toBe('length - 2 * leg');
    expect(text('(a + b) * c / (d * e)')).toBe('(a + b) * c / d / e');
    expect(text('a - (b - c)')).toBe('a + c - b');
    expect(text('drawers > 4 ? 600 : 500')).toBe('drawers > 4 ? 600 : 500');
    expect(text('max(in(23 + 5/8), .5 * width)')).toBe('max(in(23 + 5 / 8), 0.5 * width)');
    expect(text('-a')).toBe('- a');
  });

  it('refuses whatever is no arithmetic, each time with a mend', () => {
    for (const formula of [
      '',
      'a.b',
      'a[1]',
      'this',
      'true',
      '"text"',
      'a && b',
      'a ** b',
      'a % b',
      'a = b',
      'a; b',
      'a b',
      '2,5',
      '1e400',
      '12345678901234',
      '!a',
      'a > b',
      'a ? b : c',
      'constructor(1)',
      'toString()',
      '(a)(b)',
      'x => 1',
      'new a',
      '(((',
    ]) {
      expect([formula, refused(formula).mend === '']).toEqual([formula, false]);
    }
  });

  it('bounds length and nesting, however they come', () => {
    expect(refused('1+'.repeat(300)).reason).toContain('letters');
    expect(refused(`${'('.repeat(200)}1${')'.repeat(199)}`).mend).not.toBe('');
    for (const deep of [
      `${'-('.repeat(60)}a${')'.repeat(60)}`,
      `${'max(1,'.repeat(40)}a${')'.repeat(40)}`,
      `${'('.repeat(50)}a${'+1)*2'.repeat(50)}`,
      `${'a>1?1:'.repeat(40)}2`,
    ])
      expect(refused(deep).reason).toContain('nested');
    // A long chain is flat, and brackets alone nest nothing.
    expect(expressionText(readFormula(`${'a+'.repeat(150)}a`))).toHaveLength(150 * 4 + 1);
    expect(expressionText(readFormula(`${'('.repeat(150)}a${')'.repeat(150)}`))).toBe('a');
  });

  it('reads its own words as the same formula', () => {
    const leaf = fc.oneof(
      fc.constantFrom('length', 'drawers', 'w2'),
      fc.integer({ min: 0, max: 9999 }).map(String),
    );
    const { formula } = fc.letrec<{ formula: string }>((tie) => ({
      formula: fc.oneof(
        { maxDepth: 3 },
        leaf,
        fc
          .tuple(tie('formula'), fc.constantFrom('+', '-', '*', '/'), tie('formula'))
          .map(([a, sign, b]) => `(${a}) ${sign} (${b})`),
        fc.tuple(tie('formula'), tie('formula')).map(([a, b]) => `min(${a}, ${b})`),
        fc
          .tuple(tie('formula'), fc.constantFrom('<', '>=', '=='), tie('formula'))
          .map(([a, sign, b]) => `((${a}) ${sign} (${b}) ? ${a} : ${b})`),
      ),
    }));
    fc.assert(
      fc.property(formula, (text) => {
        fc.pre(text.length <= 400);
        const read = readFormula(text);
        const again = expressionText(read);
        fc.pre(again.length <= 400);
        expect(expressionText(readFormula(again))).toBe(again);
      }),
    );
  });

  it('never hangs and throws nothing unnamed, whatever it is given', () => {
    const piece = fc.oneof(
      fc.constantFrom(...'+-*/()?:<>=!,.;[]{}"\'`$@#%&|^~ \\ab1e9'.split('')),
      fc.constantFrom('max', 'in(', 'constructor', '__proto__', '=>', '0x', '1e', '??', 'new '),
    );
    const noise = fc.oneof(
      fc.array(piece, { maxLength: 120 }).map((parts) => parts.join('')),
      fc.string({ maxLength: 450, unit: 'binary' }),
    );
    fc.assert(
      fc.property(noise, (text) => {
        try {
          readFormula(text);
        } catch (error) {
          expect(error).toBeInstanceOf(FormulaError);
        }
      }),
      { numRuns: 500 },
    );
  });
});
