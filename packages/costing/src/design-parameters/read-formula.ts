import jsep from 'jsep';
import { COMPARISONS, type Expression } from './expression.ts';
import { MOST_FORMULA_LETTERS } from './formula.ts';
import { FormulaError } from './formula-error.ts';
import { FORMULA_FUNCTIONS } from './formula-functions.ts';

/** Deepest nesting of brackets, conditions and functions. */
const MOST_NESTING = 20;
const NUMBER = /^(?:\d{1,12}(?:\.\d{1,12})?|\.\d{1,12})$/;
const KNOWN = 'use + - * /, brackets, a condition such as drawers > 4 ? 600 : 500, and the functions';

/** Signs as word processors make them. */
function plain(text: string): string {
  return text
    .replace(/[‐‑‒–—−]/g, '-')
    .replace(/[×·]/g, '*')
    .replace(/÷/g, '/')
    .replace(/\s+/g, ' ')
    .trim();
}

function parse(text: string): jsep.Expression {
  if (text === '') throw new FormulaError('is empty', 'write a number, or a sum such as length - 2 * leg');
  if (text.length > MOST_FORMULA_LETTERS)
    throw new FormulaError(
      `has ${text.length} letters, more than ${MOST_FORMULA_LETTERS}`,
      'give parts of it a name as parameters of their own',
    );
  try {
    return jsep(text);
  } catch (error) {
    if (error instanceof Error)
      throw new FormulaError(`cannot be read ("${text}": ${error.message})`, `${KNOWN} ${functionNames()}`);
    throw error;
  }
}

function functionNames(): string {
  return Object.keys(FORMULA_FUNCTIONS).join(', ');
}

function refuse(what: string): FormulaError {
  return new FormulaError(`holds ${what}`, `${KNOWN} ${functionNames()}`);
}

/** Adds or takes off one term, opening sums inside sums. */
function sumOf(terms: readonly (readonly [Expression, boolean])[]): Expression {
  const plus: Expression[] = [];
  const minus: Expression[] = [];
  for (const [term, isAdded] of terms) {
    if (term.kind === 'sum') {
      plus.push(...(isAdded ? term.plus : term.minus));
      minus.push(...(isAdded ? term.minus : term.plus));
    } else (isAdded ? plus : minus).push(term);
  }
  return { kind: 'sum', plus, minus };
}

function productOf(left: Expression, right: Expression, isTimes: boolean): Expression {
  const times: Expression[] = [];
  const by: Expression[] = [];
  for (const [factor, isAbove] of [[left, true] as const, [right, isTimes] as const]) {
    if (factor.kind === 'product') {
      (isAbove ? times : by).push(...factor.times);
      (isAbove ? by : times).push(...factor.by);
    } else (isAbove ? times : by).push(factor);
  }
  return { kind: 'product', times, by };
}

const is = <T extends jsep.Expression>(node: jsep.Expression, type: T['type']): node is T =>
  node.type === type;

function convert(node: jsep.Expression, depth: number): Expression {
  if (depth > MOST_NESTING)
    throw new FormulaError(
      `is nested more than ${MOST_NESTING} deep`,
      'give parts of it a name as parameters of their own',
    );
  if (is<jsep.Literal>(node, 'Literal')) {
    if (!NUMBER.test(node.raw))
      throw new FormulaError(
        `holds ${node.raw}, which is no number`,
        'write numbers with digits and a decimal point',
      );
    return { kind: 'number', text: node.raw.startsWith('.') ? `0${node.raw}` : node.raw };
  }
  if (is<jsep.Identifier>(node, 'Identifier')) return { kind: 'name', name: node.name };
  if (is<jsep.UnaryExpression>(node, 'UnaryExpression')) {
    if (node.operator !== '-' && node.operator !== '+') throw refuse(`the sign ${node.operator}`);
    return sumOf([[convert(node.argument, depth + 1), node.operator === '+']]);
  }
  if (is<jsep.BinaryExpression>(node, 'BinaryExpression')) return arithmetic(node, depth);
  if (is<jsep.ConditionalExpression>(node, 'ConditionalExpression')) return condition(node, depth);
  if (is<jsep.CallExpression>(node, 'CallExpression')) {
    const name = is<jsep.Identifier>(node.callee, 'Identifier') ? node.callee.name : '';
    if (!Object.hasOwn(FORMULA_FUNCTIONS, name))
      throw refuse(name === '' ? 'a call of what is no function' : `"${name}", which is no function`);
    return { kind: 'call', name, inputs: node.arguments.map((one) => convert(one, depth + 1)) };
  }
  if (is<jsep.Compound>(node, 'Compound') || is<jsep.SequenceExpression>(node, 'SequenceExpression'))
    throw new FormulaError(
      'holds two values side by side',
      'put a sign between them; write 23 5/8 as 23 + 5/8 and a decimal with a point',
    );
  throw refuse('what is no arithmetic');
}

function rankOf(node: jsep.Expression): 'sum' | 'product' | null {
  if (!is<jsep.BinaryExpression>(node, 'BinaryExpression')) return null;
  if (node.operator === '+' || node.operator === '-') return 'sum';
  return node.operator === '*' || node.operator === '/' ? 'product' : null;
}

function arithmetic(node: jsep.BinaryExpression, depth: number): Expression {
  const { operator } = node;
  // A chain of like operators leans to the left and is opened flat, so only its right sides count as deeper.
  const isChain = rankOf(node.left) === rankOf(node);
  const left = () => convert(node.left, isChain ? depth : depth + 1);
  const right = () => convert(node.right, depth + 1);
  if (operator === '+' || operator === '-')
    return sumOf([
      [left(), true],
      [right(), operator === '+'],
    ]);
  if (operator === '*' || operator === '/') return productOf(left(), right(), operator === '*');
  if (COMPARISONS.some((one) => one === operator))
    throw new FormulaError(
      'compares without saying what follows',
      'write a condition such as drawers > 4 ? 600 : 500',
    );
  throw refuse(`the sign ${operator}`);
}

function condition(node: jsep.ConditionalExpression, depth: number): Expression {
  const { test } = node;
  const comparison = is<jsep.BinaryExpression>(test, 'BinaryExpression')
    ? COMPARISONS.find((one) => one === test.operator)
    : undefined;
  if (!is<jsep.BinaryExpression>(test, 'BinaryExpression') || comparison === undefined)
    throw new FormulaError(
      'asks for what is no comparison',
      `compare with ${COMPARISONS.join(' ')}, as in drawers > 4 ? 600 : 500`,
    );
  return {
    kind: 'condition',
    comparison,
    left: convert(test.left, depth + 1),
    right: convert(test.right, depth + 1),
    reached: convert(node.consequent, depth + 1),
    otherwise: convert(node.alternate, depth + 1),
  };
}

/** Reads a formula: arithmetic only. @throws FormulaError naming what is wrong with it and how to mend it */
export function readFormula(text: string): Expression {
  return convert(parse(plain(text)), 0);
}
