import type { HomedAmount, HomeFinding, HomeLine, RecoveredByRates } from './homes.ts';

/** Below the smallest coin of any currency: what divisions at the last digit leave is no finding. */
const NEGLIGIBLE = '1e-9';

/** Everything that keeps each amount from having exactly one home. */
export function findingsOf(
  amounts: readonly HomedAmount[],
  lines: readonly HomeLine[],
  recovered: readonly RecoveredByRates[],
): HomeFinding[] {
  return [
    ...amounts.flatMap((amount, index) => twice(amount, amounts.slice(0, index))),
    ...lines.flatMap(unbalanced),
    ...recovered.flatMap((one) => unpaid(one, amounts)),
  ];
}

function twice(amount: HomedAmount, before: readonly HomedAmount[]): HomeFinding[] {
  const found: HomeFinding[] = [];
  const same = before.find((other) => other.id === amount.id);
  if (same !== undefined) {
    const where =
      same.home === amount.home ? `twice in ${same.home}` : `in ${same.home} and in ${amount.home}`;
    const message = `"${amount.name}" stands ${where}; keep it once`;
    found.push({ kind: 'twice', about: amount.name, message });
  }
  const rival = before.find(
    (other) => other.recoveredAs !== undefined && other.recoveredAs === amount.recoveredAs,
  );
  if (rival !== undefined) {
    const message =
      `"${rival.name}" and "${amount.name}" are both said to be recovered as "${amount.recoveredAs}"; ` +
      'rates bring that back once: put the two together, or say it of one';
    found.push({ kind: 'twice', about: amount.name, message });
  }
  return found;
}

function unbalanced(line: HomeLine): HomeFinding[] {
  const { value } = line.nowhere;
  if (value.abs().lte(NEGLIGIBLE)) return [];
  const much = value.abs().toDecimalPlaces(2).toString();
  return value.gt(0)
    ? [
        {
          kind: 'unrecovered',
          about: line.name,
          message: `${much} a year of "${line.name}" is recovered by no rate; give the rest to a pool`,
        },
      ]
    : [
        {
          kind: 'over-recovered',
          about: line.name,
          message: `rates recover ${much} a year more than "${line.name}" costs; correct the rates or the amount`,
        },
      ];
}

function unpaid(one: RecoveredByRates, amounts: readonly HomedAmount[]): HomeFinding[] {
  if (one.perYear.value.abs().lte(NEGLIGIBLE)) return [];
  if (amounts.some((amount) => amount.recoveredAs === one.recoveredAs)) return [];
  const much = one.perYear.value.toDecimalPlaces(2).toString();
  const message = `rates recover ${much} a year as "${one.recoveredAs}", which is no yearly amount; add it`;
  return [{ kind: 'unpaid', about: one.recoveredAs, message }];
}
