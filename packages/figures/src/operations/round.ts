import { roundHalfAway } from '@scantling/decimals';
import { at, type Operation } from './operation.ts';

/** Half away from zero to the decimal places in `settings.places` (ODF 1.3 part 4, 6.17.5). */
export const round: Operation = {
  name: 'round',
  inputs: [1, 1],
  settingsFault: ({ places = '' }) =>
    /^(?:[0-9]|[12][0-9]|30)$/.test(places) ? undefined : 'rounds to no number of places from 0 to 30',
  evaluate: (values, settings) => roundHalfAway(at(values, 0), Number(settings.places)),
  phrase: (inputs, settings) => `${at(inputs, 0)}, rounded to ${settings.places} decimal places`,
  // The nudge, far below any coin, brings back ties that a binary spreadsheet holds as a little less than they are.
  formula: (inputs, settings) => `ROUND(${at(inputs, 0)}*1.0000000000001,${settings.places})`,
};
