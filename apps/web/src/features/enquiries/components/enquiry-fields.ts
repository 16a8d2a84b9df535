import type { EnquiryRecord } from '@scantling/contracts';
import type { Choice } from '../../../components/choice-list.tsx';
import { type FormValues, type GroupSpec, textOf } from '../../../components/record-editor/field-spec.ts';
import { optionalDecimal } from '../../../lib/percent.ts';
import { OUTCOME_WORDS, SOURCE_WORDS } from './enquiry-words.ts';

const choicesOf = (words: Readonly<Record<string, string>>): readonly Choice[] =>
  Object.entries(words).map(([id, label]) => ({ id, label }));

const isDecided = (values: FormValues) => ['won', 'lost'].includes(textOf(values, 'outcome'));

/** The fields of an enquiry; what came of it stands below once it is entered. */
export function enquiryGroups(
  clients: readonly Choice[],
  currency: string,
  isNew: boolean,
): readonly GroupSpec[] {
  const asked: GroupSpec = {
    legend: 'Who asks for what',
    fields: [
      {
        name: 'name',
        label: 'Enquiry',
        kind: 'text',
        isRequired: true,
        isWide: true,
        hint: 'What it is called in lists',
      },
      {
        name: 'clientId',
        label: 'Client',
        kind: 'search',
        choices: clients,
        hint: 'Empty where they are none yet',
      },
      {
        name: 'askedBy',
        label: 'Or who asked',
        kind: 'text',
        isShown: (values) => textOf(values, 'clientId') === '',
      },
      {
        name: 'contact',
        label: 'Mail or telephone',
        kind: 'text',
        isShown: (values) => textOf(values, 'clientId') === '',
      },
      { name: 'receivedOn', label: 'Received on', kind: 'date', isRequired: true },
      { name: 'source', label: 'Came by', kind: 'choice', choices: choicesOf(SOURCE_WORDS) },
      {
        name: 'sourceNote',
        label: 'How exactly',
        kind: 'text',
        isShown: (values) => textOf(values, 'source') === 'other',
      },
      { name: 'wanted', label: 'What is wanted', kind: 'lines', isWide: true },
      { name: 'wantedBy', label: 'Wanted by', kind: 'date' },
      { name: 'budget', label: 'Budget said', kind: 'decimal', suffix: currency },
    ],
  };
  const outcome: GroupSpec = {
    legend: 'What came of it',
    fields: [
      { name: 'outcome', label: 'Outcome', kind: 'choice', choices: choicesOf(OUTCOME_WORDS) },
      { name: 'outcomeOn', label: 'Decided on', kind: 'date', isShown: isDecided },
      {
        name: 'outcomeReason',
        label: 'Why',
        kind: 'lines',
        isShown: isDecided,
        hint: 'Needed where it was lost',
      },
    ],
  };
  return isNew ? [asked] : [asked, outcome];
}

export function enquiryValues(today: string) {
  return (enquiry: EnquiryRecord | null): FormValues => ({
    name: enquiry?.name ?? '',
    clientId: enquiry?.clientId ?? '',
    askedBy: enquiry?.askedBy ?? '',
    contact: enquiry?.contact ?? '',
    receivedOn: enquiry?.receivedOn ?? today,
    source: enquiry?.source ?? 'word-of-mouth',
    sourceNote: enquiry?.sourceNote ?? '',
    wanted: enquiry?.wanted ?? '',
    wantedBy: enquiry?.wantedBy ?? '',
    budget: enquiry?.budget ?? '',
    outcome: enquiry?.outcome ?? 'open',
    outcomeOn: enquiry?.outcomeOn ?? '',
    outcomeReason: enquiry?.outcomeReason ?? '',
  });
}

/** What the form sends; a day or reason of a decision that is taken back goes with it. */
export function enquiryInput(values: FormValues) {
  const text = (name: string) => textOf(values, name);
  const orNull = (name: string) => (text(name) === '' ? null : text(name));
  const decided = isDecided(values);
  return {
    name: text('name'),
    clientId: orNull('clientId'),
    askedBy: text('clientId') === '' ? text('askedBy') : '',
    contact: text('clientId') === '' ? text('contact') : '',
    receivedOn: text('receivedOn'),
    source: text('source'),
    sourceNote: text('source') === 'other' ? text('sourceNote') : '',
    wanted: text('wanted'),
    wantedBy: orNull('wantedBy'),
    budget: optionalDecimal(text('budget')),
    outcome: text('outcome'),
    outcomeOn: decided ? orNull('outcomeOn') : null,
    outcomeReason: decided ? text('outcomeReason') : '',
  };
}
