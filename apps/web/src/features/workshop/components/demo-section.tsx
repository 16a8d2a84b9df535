import { Button } from '../../../components/button.tsx';
import { ErrorNotice } from '../../../components/notices.tsx';
import { RemoveAct } from '../../../components/record-editor/remove-act.tsx';
import { Section } from '../../../components/sheet.tsx';
import { useLoadDemo } from '../api/load-demo.ts';
import { type RemovedDemo, useRemoveDemo } from '../api/remove-demo.ts';
import { countsInWords } from './demo-words.ts';
import '../../../components/record-editor/record-editor.css';

function Removed({ removed, kept, inventedName }: RemovedDemo) {
  return (
    <div role="status">
      <p>Removed: {countsInWords(removed)}.</p>
      {inventedName !== null && (
        <p>
          <strong>Your workshop still bears the invented name “{inventedName}”.</strong> Give it its own in
          the settings above; it stands on what your clients read.
        </p>
      )}
      <p>Kept, since your own records rest on it, and yours from now on: {countsInWords(kept)}.</p>
    </div>
  );
}

/** Loads the invented workshop, and removes it with everything that is its own. */
export function DemoSection() {
  const load = useLoadDemo();
  const remove = useRemoveDemo();
  return (
    <Section
      title="Demo"
      note="An invented workshop with suppliers, prices, tools, people, designs and cost sheets, all marked as invented."
    >
      {remove.isSuccess ? (
        <Removed {...remove.data.value} />
      ) : (
        <>
          {load.isError && <ErrorNotice error={load.error} />}
          {load.isSuccess && (
            <p role="status">
              {load.data.value.isNew ? 'Loaded' : 'It was there already'}:{' '}
              {countsInWords(load.data.value.content)}.
            </p>
          )}
          <div className="form-acts">
            <Button isPending={load.isPending} pendingText="Loading ..." onPress={() => load.mutate()}>
              Load the demo
            </Button>
            <RemoveAct
              title="Remove the demo?"
              act="Remove the demo"
              consequence="Everything invented goes in one step, with the user of the demo. Your own records stay, and so do the demo records they rest on."
              isPending={remove.isPending}
              error={remove.error}
              onRemove={() => remove.mutate()}
            />
          </div>
        </>
      )}
    </Section>
  );
}
