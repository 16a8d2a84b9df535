import { decimal } from '@scantling/decimals';

// International yard and pound agreement as carried in NIST SP 811 and Handbook 44, appendix C: all exact.
export const MM_PER_INCH = decimal('25.4');
export const MM_PER_FOOT = decimal('304.8');
export const M_PER_FOOT = decimal('0.3048');
export const KG_PER_POUND = decimal('0.45359237');
export const M2_PER_SQUARE_FOOT = decimal('0.09290304');
export const M3_PER_CUBIC_FOOT = decimal('0.028316846592');
export const CUBIC_INCHES_PER_CUBIC_FOOT = decimal('1728');
/** The US gallon is 231 cubic inches. */
export const CUBIC_INCHES_PER_GALLON = decimal('231');
export const LITRES_PER_GALLON = decimal('3.785411784');
/** 144 cubic inches: 144 x 0.0254^3. NIST SP 811 appendix B rounds it to 2.359737 E-03. */
export const M3_PER_BOARD_FOOT = decimal('0.002359737216');
export const CUBIC_INCHES_PER_BOARD_FOOT = decimal('144');
/** A thousandth of an inch, the measure of dry film thickness. */
export const MICROMETRES_PER_MIL = decimal('25.4');
/** kg/m3 of one lb/ft3; the one ratio here that does not end (34 digits kept). */
export const KG_M3_PER_LB_FT3 = KG_PER_POUND.div(M3_PER_CUBIC_FOOT);
