import {
  type Bill,
  type DrawnDesign,
  type Material,
  materialCodesIn,
  type PriceOffer,
  plainDesign,
  requireSized,
  type ShopRates,
  type SupplierTerms,
} from '@scantling/costing';
import { type Currency, isCurrency } from '@scantling/money';
import type { Prisma } from '../../generated/prisma/client.ts';
import { RequestProblem } from '../../problems/request-problem.ts';
import { offersFor } from '../price-lists/offers.ts';
import { supplierTerms } from '../price-lists/supplier-terms.ts';
import { shopRates } from '../workshop/shop-rates.ts';
import { materialRows, toCostingMaterial } from './costing-materials.ts';
import { type ChosenDrawing, chosenDrawing, type DesignChoice } from './design-choice.ts';

/** The form of a drawing: a variant, and values over its own. */
interface SizeChoice {
  readonly variant: string | null;
  readonly values: Readonly<Record<string, string>>;
}

interface Supplies {
  readonly materials: Material[];
  readonly suppliers: SupplierTerms[];
}

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
  readonly #supplies = new WeakMap<DrawnDesign, Map<string, Promise<Supplies>>>();
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

  /**
   * What a drawing needs in one of its forms, with the prices of a day. Asked of the same drawing again, it is known.
   * @throws CostingInputError where it cannot be sized, NoExchangeRateError
   */
  supplies({ drawing, unit }: ChosenDrawing, choice: SizeChoice, onDate: string): Promise<Supplies> {
    const known = this.#supplies.get(drawing) ?? new Map<string, Promise<Supplies>>();
    this.#supplies.set(drawing, known);
    const name = JSON.stringify([unit, choice.variant, choice.values, onDate]);
    const found = known.get(name) ?? this.#readSupplies(requireSized(drawing, choice, unit).bill, onDate);
    known.set(name, found);
    return found;
  }

  async #readSupplies(bill: Bill, onDate: string): Promise<Supplies> {
    const codes = materialCodesIn(plainDesign(bill));
    const rows = await this.#once(`materials ${JSON.stringify([...codes].sort())}`, () =>
      materialRows(this.database, codes),
    );
    const offers = await this.#offersOf(
      rows.map((row) => row.code),
      onDate,
    );
    return {
      materials: rows.map((row) => toCostingMaterial(row, offers.get(row.code) ?? [])),
      suppliers: await this.#suppliersOf([...offers.values()].flat(), onDate),
    };
  }

  async #offersOf(codes: readonly string[], onDate: string): Promise<Map<string, readonly PriceOffer[]>> {
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

  async #suppliersOf(offers: readonly PriceOffer[], onDate: string): Promise<SupplierTerms[]> {
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
