import './sheet.css';

export interface TitleBlockFact {
  readonly label: string;
  readonly value: React.ReactNode;
}

/** The paper a screen is drawn on. */
export function Sheet({ children }: { readonly children: React.ReactNode }) {
  return <article className="sheet">{children}</article>;
}

export interface SheetHeaderProps {
  readonly title: string;
  /** Where this sheet belongs ("Designs / Hall bench"); links are fine. */
  readonly path?: React.ReactNode;
  /** The title block: what the numbers below rest on. */
  readonly facts?: readonly TitleBlockFact[];
  readonly actions?: React.ReactNode;
}

export function SheetHeader({ title, path, facts = [], actions }: SheetHeaderProps) {
  return (
    <header className="sheet-header">
      <div className="sheet-heading">
        {path !== undefined && <div className="sheet-path">{path}</div>}
        <h1>{title}</h1>
        {actions !== undefined && <div className="sheet-actions">{actions}</div>}
      </div>
      {facts.length > 0 && (
        <dl className="title-block">
          {facts.map((fact) => (
            <div key={fact.label}>
              <dt>{fact.label}</dt>
              <dd>{fact.value}</dd>
            </div>
          ))}
        </dl>
      )}
    </header>
  );
}

export interface SectionProps {
  readonly title: string;
  /** One line below the heading. */
  readonly note?: React.ReactNode;
  readonly actions?: React.ReactNode;
  readonly children: React.ReactNode;
}

export function Section({ title, note, actions, children }: SectionProps) {
  return (
    <section className="section" aria-label={title}>
      <div className="section-head">
        <h2>{title}</h2>
        {note !== undefined && <p>{note}</p>}
        {actions !== undefined && <div className="section-actions">{actions}</div>}
      </div>
      {children}
    </section>
  );
}
