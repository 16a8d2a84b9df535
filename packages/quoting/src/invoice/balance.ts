import { difference, entered, type Figure, greatest, input, sum } from '@scantling/figures';
import type { Currency } from '@scantling/money';

/** One invoice, with what was credited of it and paid on it, as decimal text. */
export interface InvoiceAccount {
  readonly id: string;
  readonly number: string;
  readonly total: string;
  readonly dueOn: string;
  readonly credits: readonly { readonly id: string; readonly number: string; readonly amount: string }[];
  /** A reversal is an entry of its own, below 0. */
  readonly payments: readonly { readonly id: string; readonly label: string; readonly amount: string }[];
}

export interface Balance {
  readonly invoiced: Figure<'money'>;
  readonly credited: Figure<'money'>;
  readonly paid: Figure<'money'>;
  /** invoiced - credited - paid; below 0 where more was paid than asked for. */
  readonly owed: Figure<'money'>;
  /** What the client paid too much; 0 where nothing was. */
  readonly overpaid: Figure<'money'>;
}

const DAY_MS = 24 * 60 * 60 * 1000;

/** Whole days after the day it was due; 0 while it is not. */
export function daysOverdue(dueOn: string, today: string): number {
  return Math.max(0, Math.round((Date.parse(today) - Date.parse(dueOn)) / DAY_MS));
}

function toBalance(
  label: string,
  currency: Currency,
  all: Record<'invoiced' | 'credited' | 'paid', readonly Figure<'money'>[]>,
): Balance {
  const of = (what: string, figures: readonly Figure<'money'>[]) =>
    sum(`${label}: ${what}`, 'money', figures, currency);
  const invoiced = of('invoiced', all.invoiced);
  const credited = of('credited', all.credited);
  const paid = of('paid', all.paid);
  const owed = difference(`${label}: owed`, difference(`${label}: less credited`, invoiced, credited), paid);
  const nothing = of('nothing', []);
  const overpaid = greatest(
    `${label}: paid too much`,
    nothing,
    difference(`${label}: paid less owed`, nothing, owed),
  );
  return { invoiced, credited, paid, owed, overpaid };
}

/** What is owed on one invoice. */
export function invoiceBalance(account: InvoiceAccount, currency: Currency): Balance {
  const leaf = (key: string, label: string, value: string) =>
    input({ key, label, unit: 'money', value, currency, source: entered(label) });
  return toBalance(account.number, currency, {
    invoiced: [leaf(`invoice/${account.id}`, `invoice ${account.number}`, account.total)],
    credited: account.credits.map(({ id, number, amount }) =>
      leaf(`credit/${id}`, `credit note ${number}`, amount),
    ),
    paid: account.payments.map(({ id, label, amount }) => leaf(`payment/${id}`, label, amount)),
  });
}

export interface Statement extends Balance {
  readonly accounts: readonly {
    readonly account: InvoiceAccount;
    readonly balance: Balance;
    readonly daysOverdue: number;
  }[];
  /** Owed on invoices whose day has passed. */
  readonly overdue: Figure<'money'>;
}

/** What is owed in one currency over several invoices, as of a day. */
export function statement(accounts: readonly InvoiceAccount[], currency: Currency, today: string): Statement {
  const worked = accounts.map((account) => {
    const balance = invoiceBalance(account, currency);
    const days = balance.owed.value.gt(0) ? daysOverdue(account.dueOn, today) : 0;
    return { account, balance, daysOverdue: days };
  });
  const of = (pick: (balance: Balance) => Figure<'money'>) => worked.map(({ balance }) => pick(balance));
  return {
    ...toBalance('in all', currency, {
      invoiced: of(({ invoiced }) => invoiced),
      credited: of(({ credited }) => credited),
      paid: of(({ paid }) => paid),
    }),
    accounts: worked,
    overdue: sum(
      'in all: overdue',
      'money',
      worked.filter((one) => one.daysOverdue > 0).map(({ balance }) => balance.owed),
      currency,
    ),
  };
}
