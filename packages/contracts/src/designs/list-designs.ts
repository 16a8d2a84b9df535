import { defineContract } from '../contract.ts';
import { pageOf, pageQuery } from '../page.ts';
import { exampleShownPictureInput } from '../pictures/shown-pictures.ts';
import { designSummarySchema, exampleDesign } from './design.ts';

const { sha256, alternativeText } = exampleShownPictureInput;
const exampleCover = { sha256, alternativeText };
const { bill, parameters: _parameters, variants: _variants, version: _version, ...summary } = exampleDesign;

export const listDesigns = defineContract({
  name: 'list-designs',
  method: 'GET',
  path: '/api/designs',
  summary: 'List the designs',
  description: 'By code.',
  tag: 'designs',
  roles: 'anyone',
  query: pageQuery,
  answer: pageOf(designSummarySchema),
  example: {
    answer: {
      items: [
        { ...summary, parts: bill.parts.length, operations: bill.operations.length, cover: exampleCover },
      ],
      next: null,
    },
  },
});
