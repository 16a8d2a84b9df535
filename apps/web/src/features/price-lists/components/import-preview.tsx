import { useState } from 'react';
import { Button } from '../../../components/button.tsx';
import { Checkbox } from '../../../components/checkbox.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { Section } from '../../../components/sheet.tsx';
import { Tabs } from '../../../components/tabs.tsx';
import { formatNumber } from '../../../lib/format.ts';
import { type PriceImport, useApplyPriceImport } from '../api/price-import-calls.ts';
import { CHANGE_ORDER, CHANGE_WORDS } from './change-words.ts';
import { DropImport } from './drop-import.tsx';
import { ImportRows } from './import-rows.tsx';
import { MappingForm } from './mapping-form.tsx';
import '../../../components/record-editor/record-editor.css';

/** What an import would change, kind by kind, and the two acts: all of it, or none. */
export function ImportPreview({ priceImport }: { readonly priceImport: PriceImport }) {
  const { id, counts } = priceImport;
  const [isMapping, setIsMapping] = useState(false);
  const [isLeftOut, setIsLeftOut] = useState(false);
  const apply = useApplyPriceImport(id);
  const unreadable = counts.unreadable;
  const isBlocked = unreadable > 0 && !isLeftOut;
  const kinds = CHANGE_ORDER.filter((change) => counts[change] > 0);
  if (isMapping) {
    return (
      <Section title="Which column is which">
        <MappingForm priceImport={priceImport} onDone={() => setIsMapping(false)} />
      </Section>
    );
  }
  return (
    <>
      <Section title="Take it over" note="As one new list, whole or not at all.">
        {apply.isError && <ErrorNotice error={apply.error} />}
        {unreadable > 0 && (
          <Checkbox
            label={
              unreadable === 1
                ? 'Leave out the row that cannot be read'
                : `Leave out the ${formatNumber(unreadable, 0)} rows that cannot be read`
            }
            isSelected={isLeftOut}
            onChange={setIsLeftOut}
          />
        )}
        <div className="form-acts">
          <Button
            look="main"
            isDisabled={isBlocked}
            isPending={apply.isPending}
            pendingText="Taking over ..."
            onPress={() => apply.mutate(isLeftOut)}
          >
            Take over these prices
          </Button>
          <DropImport importId={id} />
          <Button onPress={() => setIsMapping(true)}>Change the columns</Button>
          {isBlocked && (
            <span className="field-hint">
              Some rows cannot be read: mend the file and send it again, or leave them out.
            </span>
          )}
        </div>
      </Section>
      <Section title="What changes">
        {kinds.length === 0 ? (
          <p>The file has no rows with prices.</p>
        ) : (
          <Tabs
            label="Kinds of change"
            items={kinds.map((change) => ({
              id: change,
              label: `${CHANGE_WORDS[change]} ${formatNumber(counts[change], 0)}`,
              content: <ImportRows importId={id} change={change} />,
            }))}
          />
        )}
      </Section>
    </>
  );
}
