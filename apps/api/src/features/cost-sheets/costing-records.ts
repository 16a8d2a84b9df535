import type { Bill, PriceOffer, ShopRates, SupplierTerms } from '@scantling/costing';
import { materialCodesIn, plainDesign } from '@scantling/costing';
import { type Currency, isCurrency } from '@scantling/money';
import type { Prisma } from '../../generated/prisma/client.ts';
import { RequestProblem } from '../../problems/request-problem.ts';
import { offersFor } from '../price-lists/offers.ts';
import { supplierTerms } from '../price-lists/supplier-terms.ts';
import { shopRates } from '../workshop/shop-rates.ts';
import { type MaterialRow, materialRows } from './costing-materials.ts';
import { type ChosenDrawing, chosenDrawing, type DesignChoice } from './design-choice.ts';

interface Options {
  /** A price list that is left out, as if it had never come. */
  readonly without?: string;
}

/** What cost sheets rest on, as it is now, each record read once: for one sheet, or for many one after the other. */
export class CostingRecords {
  readonly database: Prisma.TransactionClient;
  readonly today: string;
  readonly #without: string | undefined;
  readonly #read = new Map<string, Promise<unknown>>();
  readonly #offers = new Map<string, Map<string, readonly PriceOffer[]>>();

  /** @param today YYYY-MM-DD, the day of prices where a sheet names none */
  constructor(database: Prisma.TransactionClient, today: string, { without }: Options = {}) {
    this.database = database;
    this.today = today;
    this.#without = without;
  }

  /** @throws RequestProblem input-invalid without a workshop */
  currency(): Promise<Currency> {
    return this.#once('currency', async () => {
      const workshop = await this.database.workshop.findUnique({
        where: { id: 1 },
        select: { currency: true },
      });
      if (workshop !== null && isCurrency(workshop.currency)) return workshop.currency;
      throw new RequestProblem('input-invalid', {
        errors: [
          {
            field: 'workshop',
            message: 'is not set up',
            mend: 'Enter the workshop, its currency and its rates first.',
          },
        ],
      });
    });
  }

  /** @throws RequestProblem input-invalid where the design has no such revision */
  drawing({ designId, revision = null }: DesignChoice): Promise<ChosenDrawing> {
    return this.#once(`drawing ${designId} ${revision}`, () =>
      chosenDrawing(this.database, { designId, revision }),
    );
  }

  rates(): Promise<ShopRates> {
    return this.#once('rates', () => shopRates(this.database, this.today));
  }

  /** The records behind a bill's materials; a family brings all its members. */
  materials(bill: Bill): Promise<MaterialRow[]> {
    const codes = materialCodesIn(plainDesign(bill));
    return this.#once(`materials ${JSON.stringify([...codes].sort())}`, () =>
      materialRows(this.database, codes),
    );
  }

  /** @throws NoExchangeRateError */
  async offers(codes: readonly string[], onDate: string): Promise<Map<string, readonly PriceOffer[]>> {
    const known = this.#offers.get(onDate) ?? new Map<string, readonly PriceOffer[]>();
    this.#offers.set(onDate, known);
    const missing = codes.filter((code) => !known.has(code));
    if (missing.length > 0) {
      const found = await offersFor(
        this.database,
        missing,
        onDate,
        await this.currency(),
        this.#without === undefined ? {} : { without: this.#without },
      );
      for (const code of missing) known.set(code, found.get(code) ?? []);
    }
    return new Map(codes.flatMap((code) => (known.has(code) ? [[code, known.get(code) ?? []]] : [])));
  }

  async suppliers(offers: readonly PriceOffer[], onDate: string): Promise<SupplierTerms[]> {
    const codes = [...new Set(offers.map(({ supplier }) => supplier))].sort();
    const currency = await this.currency();
    return this.#once(`suppliers ${onDate} ${JSON.stringify(codes)}`, () =>
      supplierTerms(this.database, offers, onDate, currency),
    );
  }

  #once<T>(name: string, read: () => Promise<T>): Promise<T> {
    const known = this.#read.get(name);
    if (known !== undefined) return known as Promise<T>;
    const reading = read();
    this.#read.set(name, reading);
    return reading;
  }
}
