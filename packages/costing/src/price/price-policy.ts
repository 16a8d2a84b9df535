/** How the price follows from the cost. Shares are decimal text (0.35 is 35 %), amounts in the sheet's currency. */
export type PricePolicy =
  | { readonly kind: 'markup'; readonly markup: string }
  | {
      readonly kind: 'markup-by-class';
      readonly materials: string;
      readonly labour: string;
      readonly machines: string;
      readonly other: string;
    }
  | { readonly kind: 'margin'; readonly margin: string }
  | { readonly kind: 'hourly-earnings'; readonly perHour: string }
  | {
      readonly kind: 'entered';
      readonly price: string;
      /** What the price is for; all pieces together when absent. */
      readonly per?: EnteredPer;
    };

export const ENTERED_PER = ['batch', 'piece'] as const;
export type EnteredPer = (typeof ENTERED_PER)[number];

export const POLICY_KINDS = [
  'markup',
  'markup-by-class',
  'margin',
  'hourly-earnings',
  'entered',
] as const satisfies readonly PricePolicy['kind'][];
