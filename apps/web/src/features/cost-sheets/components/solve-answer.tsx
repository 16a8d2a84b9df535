import { useNavigate } from '@tanstack/react-router';
import { useMemo } from 'react';
import { useLocale } from 'react-aria-components';
import { Button } from '../../../components/button.tsx';
import { Curve } from '../../../components/charts/curve.tsx';
import { recorded } from '../../../components/edit-grid/undo-history.ts';
import { RuledFrame } from '../../../components/ruled-frame.tsx';
import { Section } from '../../../components/sheet.tsx';
import { FigureValue } from '../../figures/figure-value.tsx';
import { isShare } from '../../figures/leaf-text.ts';
import type { SheetSolution } from '../api/solve-cost-sheet.ts';
import { estimateWords } from './estimate-words.ts';
import { priceFollowsWords } from './price-rule.ts';
import { RESULT_LABELS, resultPlaces } from './result-words.ts';
import { curveWindow, solveCurve } from './solve-curve.ts';
import { type HeldPrice, inputWords, outcomeWords, type SolveVoice, solutionWords } from './solve-words.ts';
import { keepTrial, keptTrial, withTried } from './tried-values.ts';
import { type AskedSheet, figureOf } from './use-asked-sheet.ts';
import './question.css';

interface SolveAnswerProps {
  readonly asked: AskedSheet;
  readonly solution: SheetSolution;
  readonly target: string;
  readonly held: HeldPrice | null;
}

type Probe = SheetSolution['now'];

const PLACES_TRIED = 12;

/** What an input must be: in words, as figures, and drawn; and the way to try it on the sheet. */
export function SolveAnswer({ asked, solution, target, held }: SolveAnswerProps) {
  const { locale } = useLocale();
  const { worked, sheet, result, now } = asked;
  const leaf = figureOf(worked.figures, solution.leaf);
  const system = sheet.unitSystem;
  const voice: SolveVoice = { leaf, name: result.name, now, target, held, system, locale };
  const estimate = estimateWords(worked.figures, voice, solution);
  const follows = priceFollowsWords(sheet.terms.policy, result.name);
  return (
    <Section title="The answer" note="solved by trying values, with every rounding and whole pack">
      <p className="question-answer" role="status">
        {solutionWords(voice, solution)}
      </p>
      {solution.crossings.length === 0 && follows !== null && <p className="question-note">{follows}</p>}
      {estimate !== null && <p className="question-note">{estimate}</p>}
      <TryActs asked={asked} solution={solution} voice={voice} />
      <ProbeTable solution={solution} voice={voice} />
      <SolutionCurve asked={asked} solution={solution} voice={voice} />
    </Section>
  );
}

interface PartProps {
  readonly solution: SheetSolution;
  readonly voice: SolveVoice;
}

function TryActs({ asked, solution, voice }: PartProps & { readonly asked: AskedSheet }) {
  const navigate = useNavigate();
  const { id } = asked.sheet;
  if (solution.crossings.length === 0) return null;
  const tryOnSheet = (value: string): void => {
    const { history } = keptTrial(sessionStorage, id);
    const next = withTried(history.present, voice.leaf.id, value);
    keepTrial(sessionStorage, id, { isOn: true, history: recorded(history, next) });
    void navigate({ to: '/cost-sheets/$sheetId', params: { sheetId: id } });
  };
  return (
    <div className="question-foot">
      {solution.crossings.map(({ at }) => {
        const { value } = figureOf(solution.figures, at.value);
        const short = shortOf(value);
        return (
          <Button key={at.value} onPress={() => tryOnSheet(short)}>
            Try {inputWords(voice, short)} on the sheet
          </Button>
        );
      })}
    </div>
  );
}

function shortOf(value: string): string {
  const [whole = value, places = ''] = value.split('.');
  return places.length <= PLACES_TRIED ? value : `${whole}.${places.slice(0, PLACES_TRIED)}`;
}

function probesOf({ crossings, steps, why, now, least, greatest }: SheetSolution) {
  const near = why === 'never-reaches' ? [least, greatest] : [];
  const rows: readonly { readonly words: string; readonly probe: Probe | null }[] = [
    { words: 'As it stands', probe: now },
    ...crossings.map(({ at }) => ({ words: 'As wanted', probe: at })),
    ...steps.flatMap(({ below, above }) => [
      { words: 'Just before the step', probe: below },
      { words: 'Just after it', probe: above },
    ]),
    ...near.map((probe, at) => ({ words: at === 0 ? 'Furthest below' : 'Furthest above', probe })),
  ];
  return rows.flatMap(({ words, probe }) => (probe === null ? [] : [{ words, probe }]));
}

function ProbeTable({ solution, voice }: PartProps) {
  const { leaf, name, system } = voice;
  const places = resultPlaces(name);
  const label = `${leaf.label} and what comes of it`;
  const outcome = (id: string | null) =>
    id === null ? (
      'no answer'
    ) : (
      <FigureValue id={id} isPercent={name === 'margin'} {...(places === undefined ? {} : { places })} />
    );
  return (
    <RuledFrame label={label}>
      <table className="ruled-rows">
        <caption className="visually-hidden">{label}</caption>
        <thead>
          <tr>
            <td />
            <th scope="col" className="numeric">
              {leaf.label}
            </th>
            <th scope="col" className="numeric">
              {RESULT_LABELS[name]}
            </th>
            <th scope="col" className="numeric">
              Apart from what is wanted
            </th>
          </tr>
        </thead>
        <tbody>
          {probesOf(solution).map(({ words, probe }) => (
            <tr key={probe.value}>
              <th scope="row" className="ruled-name">
                {words}
              </th>
              <td className="numeric">
                <FigureValue id={probe.value} isPercent={isShare(leaf)} isInInches={system === 'imperial'} />
              </td>
              <td className="numeric">{outcome(probe.result)}</td>
              <td className="numeric">{outcome(probe.residual)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </RuledFrame>
  );
}

function SolutionCurve({ asked, solution, voice }: PartProps & { readonly asked: AskedSheet }) {
  const { figures, crossings, steps, now } = solution;
  const { leaf, name } = voice;
  const marks = useMemo(() => {
    const mark = (label: string, { value, result }: Probe, isFound: boolean) =>
      result === null
        ? []
        : [{ label, at: figureOf(figures, value).value, value: figureOf(figures, result).value, isFound }];
    return [
      ...mark('as it stands', now, false),
      ...crossings.flatMap(({ at }) => mark('as wanted', at, true)),
      ...steps.flatMap(({ below }) => mark('the step', below, false)),
    ];
  }, [figures, crossings, steps, now]);
  const points = useMemo(() => {
    const places = marks.map(({ at }) => at);
    const window = curveWindow(leaf.value, places, leaf.bounds);
    return solveCurve(asked.worked.figures, { leaf: leaf.id, result: asked.result.id, ...window }, places);
  }, [asked.worked.figures, asked.result.id, leaf, marks]);
  if (points.length < 2) return null;
  return (
    <Curve
      label={`${RESULT_LABELS[name]} as “${leaf.label}” grows`}
      points={points}
      marks={marks}
      level={{ value: voice.target, label: `wanted: ${outcomeWords(voice, voice.target)}` }}
      axisLabel={leaf.label}
      valueLabel={RESULT_LABELS[name]}
      writeAt={(at) => inputWords(voice, at)}
      write={(value) => outcomeWords(voice, value)}
    />
  );
}
