export const COMPARISONS = ['<', '<=', '>', '>=', '==', '!='] as const;
export type Comparison = (typeof COMPARISONS)[number];

/** A formula as read. Sums and products are flat, so that a long one is not a deep one. */
export type Expression =
  | { readonly kind: 'number'; readonly text: string }
  | { readonly kind: 'name'; readonly name: string }
  /** Everything in `plus` added, everything in `minus` taken off. */
  | { readonly kind: 'sum'; readonly plus: readonly Expression[]; readonly minus: readonly Expression[] }
  /** Everything in `times` multiplied, divided by everything in `by`. */
  | { readonly kind: 'product'; readonly times: readonly Expression[]; readonly by: readonly Expression[] }
  | {
      readonly kind: 'condition';
      readonly comparison: Comparison;
      readonly left: Expression;
      readonly right: Expression;
      readonly reached: Expression;
      readonly otherwise: Expression;
    }
  | { readonly kind: 'call'; readonly name: string; readonly inputs: readonly Expression[] };

const inside = (expression: Expression): string => {
  const text = expressionText(expression);
  return expression.kind === 'sum' || expression.kind === 'condition' ? `(${text})` : text;
};
const unlessCondition = (expression: Expression): string =>
  expression.kind === 'condition' ? `(${expressionText(expression)})` : expressionText(expression);
const divisor = (expression: Expression): string =>
  expression.kind === 'product' ? `(${expressionText(expression)})` : inside(expression);

/** The expression in words a maker wrote or could have written. */
export function expressionText(expression: Expression): string {
  switch (expression.kind) {
    case 'number':
      return expression.text;
    case 'name':
      return expression.name;
    case 'sum': {
      const plus = expression.plus.map(unlessCondition);
      return [plus.join(' + '), ...expression.minus.map((one) => `- ${inside(one)}`)].join(' ').trim();
    }
    case 'product':
      return [
        expression.times.length === 0 ? '1' : expression.times.map(inside).join(' * '),
        ...expression.by.map((one) => `/ ${divisor(one)}`),
      ].join(' ');
    case 'condition': {
      const { comparison, left, right, reached, otherwise } = expression;
      const texts = [left, right, reached, otherwise].map(unlessCondition);
      return `${texts[0]} ${comparison} ${texts[1]} ? ${texts[2]} : ${texts[3]}`;
    }
    case 'call':
      return `${expression.name}(${expression.inputs.map(expressionText).join(', ')})`;
  }
}
