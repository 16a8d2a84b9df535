import { editCostSheet } from '@scantling/contracts';
import { isFormula } from '@scantling/costing';
import { useQuery } from '@tanstack/react-query';
import { Button } from '../../../components/button.tsx';
import { FieldGroup } from '../../../components/field.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Select } from '../../../components/select.tsx';
import { Section } from '../../../components/sheet.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import { useEditCostSheet } from '../api/edit-cost-sheet.ts';
import type { CostSheetRecord } from '../api/get-cost-sheet.ts';
import { designRevisionQuery } from '../api/get-design-revision.ts';
import { revisionChoicesQuery } from '../api/list-design-revisions.ts';
import { choiceOf, type DesignChoice, isSameChoice, withValue } from './design-choice.ts';
import { ParameterField } from './parameter-field.tsx';

interface ChoiceSectionProps {
  readonly sheet: CostSheetRecord;
  readonly etag: string | null;
  /** What the figures above are worked out for. */
  readonly choice: DesignChoice;
  readonly onTry: (choice: DesignChoice | null) => void;
  /** What trying it failed on. */
  readonly error: unknown;
}

/** Which form of the design is costed. What is tried here is worked out at once and kept only when that is said. */
export function ChoiceSection({ sheet, etag, choice, onTry, error }: ChoiceSectionProps) {
  const number = choice.revision ?? sheet.newestRevision;
  const drawing = useQuery(designRevisionQuery(sheet.designId, number)).data;
  const listed = useQuery(revisionChoicesQuery(sheet.designId, sheet.newestRevision)).data;
  const edit = useEditCostSheet(sheet.id);
  const canEdit = useMayCall(editCostSheet);
  const isTried = !isSameChoice(choice, choiceOf(sheet));
  const hasChoices = (drawing?.parameters.length ?? 0) > 0;
  if (drawing === undefined || (!hasChoices && sheet.newestRevision === 1)) return null;
  const { errorFor } = fieldErrors(error, [
    'variant',
    'revision',
    ...drawing.parameters.map(({ id }) => `parameterValues.${id}`),
  ]);
  const attempt = (next: DesignChoice): void => onTry(isSameChoice(next, choiceOf(sheet)) ? null : next);
  const keep = (): void => {
    const { title, designId, clientId, basis, onDate, quantities, terms } = sheet;
    const body = { title, designId, clientId, basis, onDate, quantities, terms };
    edit.mutate(
      { body: { ...body, ...choice, parameterValues: { ...choice.parameterValues } }, etag },
      { onSuccess: () => onTry(null) },
    );
  };
  const revisions = [
    { id: 'newest', label: `Newest (${sheet.newestRevision})`, note: 'follows every change of the design' },
    // Until the list is read, what is chosen can be shown.
    ...(listed ?? (choice.revision === null ? [] : [{ id: String(number), label: `Revision ${number}` }])),
  ];
  return (
    <Section
      title="What is made"
      note={
        isTried
          ? 'tried, not kept: the figures show it'
          : 'another size, wood or number is worked out at once'
      }
      actions={
        isTried ? (
          <>
            <Button onPress={() => onTry(null)}>Back to what is kept</Button>
            {canEdit && (
              <Button look="main" isPending={edit.isPending} pendingText="Keeping ..." onPress={keep}>
                Keep this choice
              </Button>
            )}
          </>
        ) : undefined
      }
    >
      {edit.isError && <ErrorNotice error={edit.error} />}
      <FieldGroup legend="Variant and parameters">
        <Select
          label="Drawing"
          choices={revisions}
          value={choice.revision === null ? 'newest' : String(choice.revision)}
          onChange={(id) => attempt({ ...choice, revision: id === 'newest' ? null : Number(id) })}
          error={errorFor('revision')}
        />
        {drawing.variants.length > 0 && (
          <Select
            label="Variant"
            choices={[
              { id: '', label: 'As drawn' },
              ...drawing.variants.map(({ id, name }) => ({ id, label: name })),
            ]}
            value={choice.variant ?? ''}
            onChange={(id) => attempt({ ...choice, variant: id === '' ? null : id, parameterValues: {} })}
            error={errorFor('variant')}
          />
        )}
        {drawing.parameters.flatMap((parameter) => {
          const drawn = parameter.value;
          // What is worked out from others is not chosen; the working of a size shows it.
          if (isFormula(drawn)) return [];
          return (
            <ParameterField
              key={`${parameter.id} ${choice.variant} ${number} ${choice.parameterValues[parameter.id] ?? ''}`}
              parameter={parameter}
              drawn={drawn}
              drawing={drawing}
              choice={choice}
              system={sheet.unitSystem}
              error={errorFor(`parameterValues.${parameter.id}`)}
              onValue={(value) => attempt(withValue(choice, drawing, parameter, value))}
            />
          );
        })}
      </FieldGroup>
    </Section>
  );
}
