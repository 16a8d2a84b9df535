/** An answer of a calculation, whose amounts are ids of figures. */
type Answer = Readonly<Record<string, unknown>>;
type ValueOf = (id: unknown) => unknown;

export interface CalculationRoute {
  readonly name: string;
  /** The request's body from a published check's inputs. */
  readonly body: (inputs: Answer) => object;
  /** What came out, named as the check's `expected` does. */
  readonly read: (answer: Answer, value: ValueOf) => Answer;
}

// Counts and years stay numbers in a request; every other number is a decimal and travels as text.
const NUMBERS = new Set(['units', 'year', 'firstYear', 'recoveryYears', 'decliningPercent', 'namedYear']);

function asText(value: unknown, key = ''): unknown {
  if (NUMBERS.has(key)) return value;
  if (typeof value === 'number') return String(value);
  if (Array.isArray(value)) return value.map((part) => asText(part));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, asText(part, name)]));
}

function given(inputs: Answer, more: object = {}): object {
  return { ...more, ...(asText(inputs) as object) };
}

const DOLLARS = { currency: 'USD' } as const;

function rows(answer: Answer, name: string): Answer[] {
  const list = answer[name];
  return Array.isArray(list) ? list : [];
}

function byKey(list: readonly Answer[], key: string, field: string, value: ValueOf): Answer {
  return Object.fromEntries(list.map((row) => [String(row[key]), value(row[field])]));
}

function valuesOf(answer: Answer, names: readonly string[], value: ValueOf): Answer {
  return Object.fromEntries(names.map((name) => [name, value(answer[name])]));
}

function readOverhead(answer: Answer, value: ValueOf): Answer {
  const actual = answer.actual === null ? {} : (answer.actual as Answer);
  return {
    ...valuesOf(answer, ['net', 'rate'], value),
    ...valuesOf(actual, ['recovered', 'underRecovered'], value),
    charges: (answer.charges as unknown[]).map(value),
  };
}

/** One class of cost that grows with a count, and nothing else. */
function readScaleLaw({ cost, past, asked, exponent }: Answer): object {
  const nothing = { boughtIn: '0', labour: '0', machines: '0', overhead: '0', other: '0', ownerLabour: '0' };
  const hours = { hours: '0', ownerHours: '0' };
  const byCount = { basis: 'count', exponent: String(exponent) };
  return {
    ...DOLLARS,
    pieces: [
      { id: 'past', name: 'Past', count: String(past), materials: String(cost), ...nothing, ...hours },
    ],
    asked: { count: String(asked) },
    scaling: { materials: byCount, labour: byCount },
    terms: { discount: '0', policy: { kind: 'markup', markup: '0' } },
  };
}

/** The calculation behind each function that published checks name. */
export const CALCULATION_ROUTES: Readonly<Record<string, CalculationRoute>> = {
  'costing/machine-hour-rate': {
    name: 'machine-hour-rate',
    body: (inputs) => given(inputs, DOLLARS),
    read: (answer, value) => ({
      ...valuesOf(
        answer,
        ['averageInvestment', 'owningPerYear', 'owningPerHour', 'runningPerHour', 'perHour'],
        value,
      ),
      linesPerYear: byKey(rows(answer, 'lines'), 'id', 'perYear', value),
      linesPerHour: byKey(rows(answer, 'lines'), 'id', 'perHour', value),
    }),
  },
  'costing/depreciation-schedule': {
    name: 'depreciation-schedule',
    body: (inputs) => given(inputs, DOLLARS),
    read: (answer, value) => ({
      expense: byKey(rows(answer, 'years'), 'year', 'expense', value),
      bookValue: byKey(rows(answer, 'years'), 'year', 'closing', value),
      lines: rows(answer, 'years').length,
      total: value(answer.total),
    }),
  },
  'costing/labour-rate': {
    name: 'labour-rate',
    body: (inputs) => given(inputs, DOLLARS),
    read: (answer, value) => valuesOf(answer, ['paidHour', 'perHour'], value),
  },
  'costing/overhead-rate': {
    name: 'overhead-rate',
    body: (inputs) => given(inputs, DOLLARS),
    read: readOverhead,
  },
  'costing/overhead-charge': {
    name: 'overhead-rate',
    body: (inputs) => given(inputs, DOLLARS),
    read: readOverhead,
  },
  'costing/finish-quantity': {
    name: 'finish-quantity',
    body: (inputs) => given(inputs),
    read: (answer, value) => valuesOf(answer, ['spreadingRate', 'wetFilm', 'quantity', 'litres'], value),
  },
  'quoting/quote-totals': {
    name: 'quote-totals',
    body: (inputs) => inputs,
    read: (answer, value) => ({
      ...valuesOf(answer, ['sumOfLines', 'discount', 'net', 'tax', 'total'], value),
      lineAmounts: rows(answer, 'lines').map((line) => value(line.amount)),
      taxable: byKey(rows(answer, 'taxes'), 'id', 'net', value),
      taxes: byKey(rows(answer, 'taxes'), 'id', 'tax', value),
      schedule: rows(answer, 'schedule').map((part) => value(part.amount)),
    }),
  },
  'costing/learning-curve': {
    name: 'learning-curve',
    body: (inputs) => given(inputs),
    read: (answer, value) => ({
      exponent: value(answer.exponent),
      total: byKey(rows(answer, 'runs'), 'units', 'total', value),
      average: byKey(rows(answer, 'runs'), 'units', 'average', value),
      lastUnit: byKey(rows(answer, 'runs'), 'units', 'lastUnit', value),
    }),
  },
  'quoting/scale-law': {
    name: 'early-price',
    body: readScaleLaw,
    read: (answer, value) => ({
      factor: rows(answer, 'pieces').map(({ factors }) => value((factors as Answer).materials))[0],
      likelyCost: value((answer.likely as Answer).cost),
    }),
  },
};
