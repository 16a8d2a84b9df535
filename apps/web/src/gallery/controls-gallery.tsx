import { decimal } from '@scantling/decimals';
import { useState } from 'react';
import { Button } from '../components/button.tsx';
import { LineChart } from '../components/charts/line-chart.tsx';
import { Checkbox } from '../components/checkbox.tsx';
import { ComboBox } from '../components/combo-box.tsx';
import type { DataColumn } from '../components/data-table/data-column.ts';
import { DataTable } from '../components/data-table/data-table.tsx';
import { Dialog } from '../components/dialog.tsx';
import { FieldGroup } from '../components/field.tsx';
import { FileDrop } from '../components/file-drop.tsx';
import { Menu } from '../components/menu.tsx';
import { EmptyState, ErrorNotice } from '../components/notices.tsx';
import { PasteArea } from '../components/paste-area.tsx';
import { Progress } from '../components/progress.tsx';
import { Select } from '../components/select.tsx';
import { Section, Sheet, SheetHeader } from '../components/sheet.tsx';
import { Switch } from '../components/switch.tsx';
import { Tabs } from '../components/tabs.tsx';
import { TextInput } from '../components/text-input.tsx';
import { notify } from '../components/toast.tsx';
import { Tooltip } from '../components/tooltip.tsx';
import { problemFrom } from '../lib/api-problem.ts';
import { formatMoney } from '../lib/format.ts';
import { LONG_LIST } from './bench-cost.ts';

type Line = (typeof LONG_LIST)[number];

const COLUMNS: readonly DataColumn<Line>[] = [
  { id: 'code', header: 'Code', text: (line) => line.code, width: 120 },
  { id: 'material', header: 'Material', text: (line) => line.material, width: 320 },
  {
    id: 'price',
    header: 'Price, USD',
    isNumeric: true,
    text: (line) => line.price,
    sortBy: (line) => decimal(line.price),
    width: 120,
  },
];

const FORMS = ['Rough lumber', 'Dimensioned lumber', 'Sheet', 'Each', 'Pack'].map((label) => ({
  id: label,
  label,
}));

const PROBLEM = problemFrom(422, {
  title: 'The price list was not taken',
  detail: 'Two rows must be mended; nothing was imported.',
  errors: [
    { field: 'row 14, price', message: '"7,8O" is not a number.', mend: 'Write a zero, not the letter O.' },
  ],
});

function Fields() {
  const [form, setForm] = useState<string | null>('Sheet');
  const [found, setFound] = useState<string | null>(null);
  const [length, setLength] = useState('23 5/8');
  return (
    <FieldGroup legend="Fields">
      <TextInput label="Length" suffix="in" isNumeric value={length} onChange={setLength} />
      <TextInput
        label="Price"
        isNumeric
        suffix="USD per bd ft"
        defaultValue="7,8O"
        error={{ message: '"7,8O" is not a number.', mend: 'Write a zero, not the letter O.' }}
      />
      <Select label="Form" choices={FORMS} value={form} onChange={setForm} hint="How it is sold" />
      <ComboBox label="Material" choices={FORMS} value={found} onChange={setFound} />
      <Checkbox label="Tax included" defaultSelected />
      <Switch label="Show retired tools" defaultSelected />
      <TextInput label="Note" isMultiline hint="Only seen in the workshop" />
      <TextInput label="Read only" value="RO-84" isReadOnly />
    </FieldGroup>
  );
}

function Acts() {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <div className="sheet-actions">
      <Button look="main">Save</Button>
      <Button onPress={() => notify('The price list is saved.')}>Say it is done</Button>
      <Button look="main" isPending pendingText="Saving ...">
        Save the list
      </Button>
      <Button look="danger" onPress={() => setIsOpen(true)}>
        Remove the demo
      </Button>
      <Tooltip text="Takes today's date">
        <Button>Publish</Button>
      </Tooltip>
      <Menu label="More" acts={[{ id: 'copy', label: 'Copy the table', onAct: () => notify('Copied.') }]} />
      <Dialog
        title="Remove the demo?"
        isOpen={isOpen}
        onOpenChange={setIsOpen}
        isQuestion
        actions={
          <>
            <Button onPress={() => setIsOpen(false)}>Keep it</Button>
            <Button look="danger" onPress={() => setIsOpen(false)}>
              Remove
            </Button>
          </>
        }
      >
        <p>12 designs, 3 suppliers and their prices go. This cannot be undone.</p>
      </Dialog>
    </div>
  );
}

export function ControlsGallery() {
  return (
    <Sheet>
      <SheetHeader title="Parts of the screens" facts={[{ label: 'Contents', value: 'invented' }]} />
      <Section title="Acts">
        <Acts />
      </Section>
      <Section title="Entry">
        <Fields />
        <FileDrop
          label="Price list as CSV or XLSX"
          endings={['.csv', '.xlsx']}
          onFile={(file) => notify(file.name)}
        />
        <PasteArea
          label="Paste rows"
          actText="Read the rows"
          onCells={(cells) => notify(`${cells.length} rows`)}
        />
      </Section>
      <Section title="Price history">
        <LineChart
          label="White oak 8/4 by supplier, per bd ft"
          axis="date"
          axisLabel="Date"
          isStepped
          write={(amount) => formatMoney(amount, 'USD')}
          series={[
            {
              id: 'a',
              label: 'Alder & Wray',
              points: [
                { at: '2025-01-01', value: '9.8' },
                { at: '2025-09-01', value: '10.6' },
                { at: '2026-03-01', value: '11.4' },
              ],
            },
            {
              id: 'b',
              label: 'Moss Yard',
              points: [
                { at: '2025-01-01', value: '10.2' },
                { at: '2025-06-01', value: '10.1' },
                { at: '2026-03-01', value: '10.9' },
              ],
            },
          ]}
        />
      </Section>
      <Section title="5,000 price lines">
        <DataTable
          label="Price lines"
          columns={COLUMNS}
          rows={LONG_LIST}
          rowId={(line) => line.code}
          initialSort={{ column: 'price', isDescending: true }}
          maxHeight="20rem"
        />
      </Section>
      <Section title="States">
        <ErrorNotice error={PROBLEM} retry={() => notify('Tried again.')} />
        <Progress label="Importing" percent={42} text="21,000 of 50,000 rows" />
        <Tabs
          label="States"
          items={[
            {
              id: 'one',
              label: 'Offers',
              content: (
                <EmptyState title="No offers yet" action={<Button>Import a price list</Button>}>
                  Offers come with a supplier's price list.
                </EmptyState>
              ),
            },
            { id: 'two', label: 'History', content: <p>Nothing happened yet.</p> },
          ]}
        />
      </Section>
    </Sheet>
  );
}
