import { editWorkshop, type Workshop } from '@scantling/contracts';
import { useNavigate, useSearch } from '@tanstack/react-router';
import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { PictureField } from '../../../components/picture-field.tsx';
import { ChangeClash } from '../../../components/record-editor/change-clash.tsx';
import { differences, type FormValues, shownNames } from '../../../components/record-editor/field-spec.ts';
import { FormFields } from '../../../components/record-editor/form-fields.tsx';
import { Tabs } from '../../../components/tabs.tsx';
import type { ApiAnswer } from '../../../lib/api-client.ts';
import { ApiProblem } from '../../../lib/api-problem.ts';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { useMayCall } from '../../../lib/use-session.ts';
import { useEditWorkshop } from '../api/edit-workshop.ts';
import { letterheadGroups, quotingGroups } from './paper-groups.ts';
import { LOGO, logoOf, withLogo } from './paper-values.ts';
import { workshopGroups } from './workshop-groups.ts';
import { workshopInput, workshopValues } from './workshop-values.ts';

interface WorkshopFormProps {
  readonly read: ApiAnswer<Workshop>;
  /** Reads the record afresh after a clash. */
  readonly readAgain: () => Promise<ApiAnswer<Workshop> | undefined>;
}

const PARTS = { shop: 'Shop', letterhead: 'Letterhead', quoting: 'Quotes and papers' } as const;
const PART_NAMES = ['shop', 'letterhead', 'quoting'] as const;

/** What the workshop decides once for all its cost sheets and papers, in parts that are saved together. */
export function WorkshopForm({ read, readAgain }: WorkshopFormProps) {
  const [base, setBase] = useState(read);
  const [values, setValues] = useState(() => workshopValues(read.value));
  const [theirs, setTheirs] = useState<ApiAnswer<Workshop> | null>(null);
  const mayEdit = useMayCall(editWorkshop);
  const save = useEditWorkshop();
  const { part = 'shop' } = useSearch({ from: '/shell/workshop' });
  const navigate = useNavigate();
  const groupsOf = {
    shop: workshopGroups(base.value.settings, values),
    letterhead: letterheadGroups(base.value.name),
    quoting: quotingGroups(values, new Date().getFullYear()),
  };
  const groups = PART_NAMES.flatMap((name) => groupsOf[name]);
  const logoFields = part === 'letterhead' ? [LOGO, `${LOGO}.alternativeText`] : [];
  const { errorFor, unplaced } = fieldErrors(save.error, [
    ...shownNames(groupsOf[part], values),
    ...logoFields,
  ]);
  const change = (next: FormValues): void => {
    setValues(next);
    if (save.isSuccess) save.reset();
  };
  const isChanged = JSON.stringify(values) !== JSON.stringify(workshopValues(base.value));
  const take = (answer: ApiAnswer<Workshop>): void => {
    setBase(answer);
    setValues(workshopValues(answer.value));
    setTheirs(null);
  };
  const onFailure = async (error: Error): Promise<void> => {
    if (error instanceof ApiProblem && error.status === 412) setTheirs((await readAgain()) ?? null);
  };
  return (
    <form
      className="record-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        save.mutate(
          { body: workshopInput(values), etag: base.etag },
          { onSuccess: take, onError: (error) => void onFailure(error) },
        );
      }}
    >
      {theirs !== null && (
        <ChangeClash
          differences={differences(groups, values, workshopValues(theirs.value))}
          onTakeTheirs={() => {
            take(theirs);
            save.reset();
          }}
          onKeepMine={() => {
            setBase(theirs);
            setTheirs(null);
            save.reset();
          }}
        />
      )}
      {save.isError && theirs === null && <ErrorNotice error={save.error} errors={unplaced} />}
      <Tabs
        label="Parts of the settings"
        selected={part}
        onSelect={(id) =>
          void navigate({
            to: '/workshop',
            search: id === 'letterhead' || id === 'quoting' ? { part: id } : {},
            replace: true,
          })
        }
        items={PART_NAMES.map((name) => ({
          id: name,
          label: PARTS[name],
          content: (
            <div className="record-form">
              <FormFields
                groups={groupsOf[name]}
                values={values}
                onChange={change}
                errorFor={errorFor}
                isReadOnly={!mayEdit}
              />
              {name === 'letterhead' && (
                <PictureField
                  label="Logo"
                  value={logoOf(values)}
                  onChange={(logo) => change(withLogo(values, logo))}
                  error={errorFor(LOGO)}
                  textError={errorFor(`${LOGO}.alternativeText`)}
                  isReadOnly={!mayEdit}
                />
              )}
            </div>
          ),
        }))}
      />
      <div className="form-acts">
        {mayEdit ? (
          <Button type="submit" look="main" isPending={save.isPending} pendingText="Saving ...">
            Save
          </Button>
        ) : (
          <span className="field-hint">Your role reads this and does not change it.</span>
        )}
        {isChanged && (
          <Button onPress={() => setValues(workshopValues(base.value))}>Back to what is saved</Button>
        )}
        <span role="status" className="form-said">
          {save.isSuccess ? 'Saved' : ''}
        </span>
      </div>
    </form>
  );
}
