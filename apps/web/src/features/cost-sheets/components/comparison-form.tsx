import { useQuery } from '@tanstack/react-query';
import { ComboBox } from '../../../components/combo-box.tsx';
import { FieldGroup } from '../../../components/field.tsx';
import { Select } from '../../../components/select.tsx';
import { Section } from '../../../components/sheet.tsx';
import { TextInput } from '../../../components/text-input.tsx';
import type { FieldErrors } from '../../../lib/field-errors.ts';
import type { Comparison } from '../api/compare-cost-sheets.ts';
import type { CostSheetRecord } from '../api/get-cost-sheet.ts';
import { designRevisionQuery } from '../api/get-design-revision.ts';
import { costSheetsQuery } from '../api/list-cost-sheets.ts';
import { revisionChoicesQuery } from '../api/list-design-revisions.ts';
import { piecesWords } from './class-rows.ts';

interface ComparisonFormProps {
  readonly sheet: CostSheetRecord;
  readonly chosen: Comparison;
  readonly onChoose: (chosen: Comparison) => void;
  readonly errorFor: FieldErrors['errorFor'];
}

const AS_THERE = 'as-there';
const AS_DRAWN = 'as-drawn';

/** With what this sheet is compared: another one, or itself on another day, basis, variant or revision. */
export function ComparisonForm({ sheet, chosen, onChoose, errorFor }: ComparisonFormProps) {
  const sheets = useQuery(costSheetsQuery).data ?? [];
  const other = sheets.find(({ id }) => id === chosen.with) ?? sheet;
  const number = chosen.revision === undefined ? other.newestRevision : Number(chosen.revision);
  const drawing = useQuery(designRevisionQuery(other.designId, number)).data;
  const revisions = useQuery(revisionChoicesQuery(other.designId, other.newestRevision)).data ?? [];
  const choose = (changes: { readonly [K in keyof Comparison]?: Comparison[K] | undefined }): void => {
    const next = Object.entries({ ...chosen, ...changes }).filter(([, value]) => value !== undefined);
    onChoose(Object.fromEntries(next) as Comparison);
  };
  const variants = drawing?.variants ?? [];
  const variant = chosen.asDrawn === undefined ? (chosen.variant ?? AS_THERE) : AS_DRAWN;
  return (
    <Section
      title="Compare with"
      note="the same number of pieces on both sides; worked out at once, nothing is kept"
    >
      <FieldGroup legend="The other side">
        {sheets.length > 0 && (
          <ComboBox
            label="Cost sheet"
            choices={sheets.map(({ id, title, designName }) => ({
              id,
              label: id === sheet.id ? `${title} (this one)` : title,
              note: designName,
            }))}
            value={other.id}
            onChange={(id) =>
              // Another design has other variants and revisions.
              choose({
                with: id === sheet.id || id === null ? undefined : id,
                variant: undefined,
                asDrawn: undefined,
                revision: undefined,
              })
            }
            error={errorFor('with')}
          />
        )}
        <TextInput
          label="Prices of"
          type="date"
          hint={
            other.onDate === null ? 'today where it is left empty' : `${other.onDate} where it is left empty`
          }
          value={chosen.onDate ?? ''}
          onChange={(text) => choose({ onDate: text === '' ? undefined : text })}
          error={errorFor('onDate')}
        />
        <Select
          label="Basis"
          choices={[
            { id: AS_THERE, label: `As on the sheet (${other.basis})` },
            { id: 'shop', label: 'shop', note: 'the piece pays what it uses' },
            { id: 'commission', label: 'commission', note: 'the client pays all that is bought' },
          ]}
          value={chosen.basis ?? AS_THERE}
          onChange={(id) => choose({ basis: id === 'shop' || id === 'commission' ? id : undefined })}
          error={errorFor('basis')}
        />
        {variants.length > 0 && (
          <Select
            label="Variant"
            choices={[
              { id: AS_THERE, label: 'As on the sheet' },
              { id: AS_DRAWN, label: 'As drawn' },
              ...variants.map(({ id, name }) => ({ id, label: name })),
            ]}
            value={variant}
            onChange={(id) =>
              choose({
                asDrawn: id === AS_DRAWN ? 'true' : undefined,
                variant: id === AS_DRAWN || id === AS_THERE ? undefined : id,
              })
            }
            error={errorFor('variant')}
          />
        )}
        {revisions.length > 1 && (
          <Select
            label="Drawing"
            choices={[{ id: AS_THERE, label: 'As on the sheet' }, ...revisions]}
            value={chosen.revision ?? AS_THERE}
            onChange={(id) => choose({ revision: id === AS_THERE ? undefined : id })}
            error={errorFor('revision')}
          />
        )}
        {sheet.quantities.length > 1 && (
          <Select
            label="Both for"
            choices={sheet.quantities.map((count) => ({ id: String(count), label: piecesWords(count) }))}
            value={chosen.pieces ?? String(sheet.quantities[0])}
            onChange={(id) => choose({ pieces: id })}
            error={errorFor('pieces')}
          />
        )}
      </FieldGroup>
    </Section>
  );
}
