import {
  type DecimalLike,
  decimal,
  FULL_PLACES,
  type NumberStyle,
  roundHalfAway,
  writeDecimal,
} from '@scantling/decimals';
import { type Currency, minorUnits } from './currency.ts';

/** An amount of money at its currency's minor unit (ISO 4217), half away from zero. @throws NotADecimalError */
export function formatMoney(value: DecimalLike, currency: Currency, style: NumberStyle = {}): string {
  const places = minorUnits(currency);
  const rounded = roundHalfAway(decimal(value), style.isFull ? FULL_PLACES : places);
  return writeDecimal(rounded, style.locale, {
    style: 'currency',
    currency,
    minimumFractionDigits: style.isFull ? Math.max(rounded.decimalPlaces(), places) : places,
    maximumFractionDigits: style.isFull ? FULL_PLACES : places,
  });
}

/**
 * Money per something: keeps up to two places below the minor unit, since a screw at 0.0425 is no 0.04.
 * @throws NotADecimalError
 */
export function formatRate(value: DecimalLike, currency: Currency, style: NumberStyle = {}): string {
  const least = style.places ?? minorUnits(currency);
  const most = style.isFull ? FULL_PLACES : (style.places ?? least + 2);
  return writeDecimal(roundHalfAway(decimal(value), most), style.locale, {
    style: 'currency',
    currency,
    minimumFractionDigits: least,
    maximumFractionDigits: most,
  });
}
