import {
  applyChanges,
  type ChangeReach,
  isShopWide,
  leafHome,
  type SheetChanges,
} from '@scantling/contracts';
import type { FigureNode, TriedTable } from '@scantling/figures';
import type { LengthSystem } from '@scantling/units';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { useLocale } from 'react-aria-components';
import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Loading } from '../../../components/progress.tsx';
import { Select } from '../../../components/select.tsx';
import { Section } from '../../../components/sheet.tsx';
import { notify } from '../../../components/toast.tsx';
import { useMayCall } from '../../../lib/use-session.ts';
import { leafWords } from '../../figures/leaf-text.ts';
import { useApplyChanges } from '../api/apply-changes.ts';
import { foreseenChangesQuery } from '../api/preview-changes.ts';
import { ForeseenChanges } from './foreseen-changes.tsx';
import { leafErrors } from './leaf-errors.ts';
import './trial.css';

interface TakeOverProps {
  readonly sheetId: string;
  readonly etag: string | null;
  readonly tried: TriedTable;
  readonly system: LengthSystem;
  readonly onDone: (done: SheetChanges) => void;
  readonly onCancel: () => void;
}

const HERE = { id: 'here', label: 'Here only', note: 'an own value of this cost sheet' };

/** Where a value can go; one choice where there is nothing to ask. */
function reaches(leaf: FigureNode): { id: string; label: string; note: string }[] {
  const home = leafHome(leaf.id);
  if (home.kind === 'terms')
    return [{ id: 'here', label: 'Here only', note: 'the terms of this cost sheet' }];
  if (home.kind === 'nowhere') return [HERE];
  const note = isShopWide(home) ? 'all pieces that rest on it' : 'the design, as its next revision';
  return [HERE, { id: 'everywhere', label: 'Everywhere it is used', note }];
}

/** Takes the values tried over: each is asked for, and what it changes is seen before anything is done. */
export function TakeOver({ sheetId, etag, tried, system, onDone, onCancel }: TakeOverProps) {
  const { locale } = useLocale();
  const [chosen, setChosen] = useState<Readonly<Record<string, ChangeReach>>>({});
  const apply = useApplyChanges(sheetId);
  const canApply = useMayCall(applyChanges);
  const leaves = tried.changed;
  const changes = leaves.map((leaf) => ({
    leaf: leaf.id,
    value: tried.table[leaf.id]?.value ?? leaf.value,
    reach: chosen[leaf.id] ?? 'here',
  }));
  const foreseen = useQuery({
    ...foreseenChangesQuery(sheetId, { changes }),
    enabled: canApply && changes.length > 0 && !apply.isPending,
  });
  const choose = (all: ChangeReach): void =>
    setChosen(
      Object.fromEntries(
        leaves.map((leaf) => [leaf.id, reaches(leaf).some(({ id }) => id === all) ? all : 'here']),
      ),
    );
  return (
    <Section title="Take over" note="for each value: here only, or everywhere it is used">
      <div className="trial-buttons">
        <Button look="quiet" onPress={() => choose('here')}>
          All here only
        </Button>
        <Button look="quiet" onPress={() => choose('everywhere')}>
          All everywhere
        </Button>
      </div>
      <ul className="take-over-list">
        {leaves.map((leaf) => {
          const choices = reaches(leaf);
          const now = tried.table[leaf.id]?.value ?? leaf.value;
          return (
            <li key={leaf.id}>
              <span>
                {leaf.label}
                <span className="trial-note">
                  {leafWords(leaf, leaf.value, system, locale)} → {leafWords(leaf, now, system, locale)}
                </span>
              </span>
              {choices.length === 1 ? (
                <span className="trial-note">here only: {choices[0]?.note}</span>
              ) : (
                <Select
                  label={`Where ${leaf.label} is changed`}
                  isLabelHidden
                  choices={choices}
                  value={chosen[leaf.id] ?? 'here'}
                  onChange={(id) =>
                    setChosen({ ...chosen, [leaf.id]: id === 'everywhere' ? 'everywhere' : 'here' })
                  }
                />
              )}
            </li>
          );
        })}
      </ul>
      {foreseen.isPending && <Loading label="Seeing what it changes" />}
      {foreseen.isError && <ErrorNotice error={foreseen.error} errors={leafErrors(foreseen.error, leaves)} />}
      {foreseen.data && <ForeseenChanges foreseen={foreseen.data} />}
      {apply.isError && <ErrorNotice error={apply.error} errors={leafErrors(apply.error, leaves)} />}
      <div className="trial-buttons">
        <Button onPress={onCancel}>Not now</Button>
        <Button
          look="main"
          isDisabled={!foreseen.isSuccess}
          isPending={apply.isPending}
          pendingText="Taking over ..."
          onPress={() =>
            apply.mutate(
              { body: { changes }, etag },
              {
                onSuccess: ({ value }) => {
                  notify(
                    changes.length === 1
                      ? 'The value is taken over.'
                      : `${changes.length} values are taken over.`,
                  );
                  onDone(value);
                },
              },
            )
          }
        >
          Take over
        </Button>
        {!foreseen.isSuccess && !foreseen.isPending && (
          <span className="trial-note">first mend what stands above</span>
        )}
      </div>
    </Section>
  );
}
