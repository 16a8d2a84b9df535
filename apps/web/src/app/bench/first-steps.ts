import {
  type Contract,
  createCostSheet,
  createDesign,
  createLabourGrade,
  createMaterial,
  createOverheadAmount,
  createSupplier,
  createTool,
  listCostSheets,
  listDesigns,
  listLabourGrades,
  listMaterials,
  listOverheadAmounts,
  listPriceLists,
  listSuppliers,
  listTools,
  startPriceImport,
} from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import type { z } from 'zod';
import { type CallableRoute, callApi } from '../../lib/api-client.ts';

type ListRoute = CallableRoute & { readonly answer: z.ZodType<{ readonly items: readonly unknown[] }> };

export interface FirstStep {
  readonly act: string;
  readonly to:
    | '/suppliers/new'
    | '/materials/new'
    | '/price-lists/import'
    | '/tools/new'
    | '/labour-grades/new'
    | '/overhead/new'
    | '/designs/new'
    | '/cost-sheets/new';
  /** What it brings to the price. */
  readonly reason: string;
  /** The first part of the keys of its queries, so that entering one makes the answer stale. */
  readonly term: string;
  readonly list: ListRoute;
  readonly create: Pick<Contract, 'roles'>;
}

/** What a price rests on, in the order in which one thing needs the other. */
export const FIRST_STEPS: readonly FirstStep[] = [
  {
    act: 'Enter a supplier',
    to: '/suppliers/new',
    reason: 'Who sells to you, in which currency, with or without tax',
    term: 'suppliers',
    list: listSuppliers,
    create: createSupplier,
  },
  {
    act: 'Enter the materials you use',
    to: '/materials/new',
    reason: 'Each with a code that bills and price lists name it by',
    term: 'materials',
    list: listMaterials,
    create: createMaterial,
  },
  {
    act: 'Import a price list',
    to: '/price-lists/import',
    reason: 'The supplier’s file as it comes, CSV or XLSX, or rows pasted from a spreadsheet',
    term: 'price-lists',
    list: listPriceLists,
    create: startPriceImport,
  },
  {
    act: 'Enter a machine',
    to: '/tools/new',
    reason: 'What it cost and how long it lasts: what an hour of it costs',
    term: 'tools',
    list: listTools,
    create: createTool,
  },
  {
    act: 'Enter a labour grade',
    to: '/labour-grades/new',
    reason: 'Pay, what comes on top of it, and the share of hours spent on jobs; yours too',
    term: 'labour-grades',
    list: listLabourGrades,
    create: createLabourGrade,
  },
  {
    act: 'Enter a yearly cost',
    to: '/overhead/new',
    reason: 'Rent, insurance, the accountant: what the shop costs before anything is made',
    term: 'overhead',
    list: listOverheadAmounts,
    create: createOverheadAmount,
  },
  {
    act: 'Enter a design and its bill',
    to: '/designs/new',
    reason: 'Parts, hardware, finish and hours, typed in or read from a file',
    term: 'designs',
    list: listDesigns,
    create: createDesign,
  },
  {
    act: 'Make a cost sheet',
    to: '/cost-sheets/new',
    reason: 'What the piece costs and what to charge, every number with its working',
    term: 'cost-sheets',
    list: listCostSheets,
    create: createCostSheet,
  },
];

/** Whether anything of the kind has been entered. */
export const isEnteredQuery = ({ term, list }: FirstStep) =>
  queryOptions({
    queryKey: [term, 'is-entered'],
    queryFn: async ({ signal }) => {
      const { value } = await callApi<ListRoute>(list, { query: { limit: 1 }, signal });
      return value.items.length > 0;
    },
  });
