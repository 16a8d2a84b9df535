import { defineContract } from '../contract.ts';
import { MAKERS } from '../roles.ts';
import { exampleWorkshop, exampleWorkshopInput, workshopInputSchema, workshopSchema } from './workshop.ts';

export const editWorkshop = defineContract({
  name: 'edit-workshop',
  method: 'PUT',
  path: '/api/workshop',
  summary: 'Change the workshop and its settings',
  description:
    'Takes the whole record; a setting left out goes back to what a workshop starts with. Amounts kept elsewhere are not converted when the currency changes.',
  tag: 'workshop',
  roles: MAKERS,
  body: workshopInputSchema,
  answer: workshopSchema,
  needsIfMatch: true,
  givesEtag: true,
  example: { body: exampleWorkshopInput, answer: exampleWorkshop },
});
