import type { PriceOffer, SupplierTerms } from '@scantling/costing';
import { type Currency, isCurrency } from '@scantling/money';
import type { DatabaseAccess } from './database-access.ts';
import { exchangesInto } from './exchange-on.ts';

/**
 * What the suppliers of these offers ask of every order, with rates of exchange into the currency. One whose currency
 * has no rate on the day is left out: none of its prices can be used either.
 */
export async function supplierTerms(
  database: DatabaseAccess,
  offers: readonly PriceOffer[],
  onDate: string,
  currency: Currency,
): Promise<SupplierTerms[]> {
  const codes = [...new Set(offers.map(({ supplier }) => supplier))];
  const [rows, exchangeFrom] = await Promise.all([
    database.supplier.findMany({ where: { code: { in: codes } }, orderBy: { code: 'asc' } }),
    exchangesInto(database, currency, onDate),
  ]);
  return rows.flatMap((row): SupplierTerms[] => {
    if (!isCurrency(row.currency)) return [];
    const exchange = row.currency === currency ? undefined : exchangeFrom(row.currency);
    if (exchange === null) return [];
    return [
      {
        code: row.code,
        name: row.name,
        currency: row.currency,
        ...(row.freightPerOrder === null ? {} : { freightPerOrder: row.freightPerOrder.toFixed() }),
        ...(row.minimumOrder === null ? {} : { minimumOrder: row.minimumOrder.toFixed() }),
        tax: {
          isIncluded: row.taxIncluded,
          rate: row.taxRate.toFixed(),
          recoverableShare: row.taxRecoverable.toFixed(),
        },
        ...(exchange === undefined ? {} : { exchange }),
      },
    ];
  });
}
