import { defineContract } from '../contract.ts';
import { exampleWorkshop, workshopSchema } from './workshop.ts';

export const getWorkshop = defineContract({
  name: 'get-workshop',
  method: 'GET',
  path: '/api/workshop',
  summary: 'Read the workshop and its settings',
  description: 'Allowances, yields, kerfs, energy and floor costs, and over what overhead is recovered.',
  tag: 'workshop',
  roles: 'anyone',
  answer: workshopSchema,
  givesEtag: true,
  example: { answer: exampleWorkshop },
});
