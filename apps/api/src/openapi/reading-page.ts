import { ALL_CONTRACTS, addressOf, type Contract } from '@scantling/contracts';
import { PROBLEM_TABLE } from '../problems/problem-table.ts';
import { audienceInWords, problemsOf } from './openapi-document.ts';

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (character) => ESCAPES[character] ?? character);
}

function block(title: string, value: unknown): string {
  if (value === undefined) return '';
  return `<h4>${title}</h4><pre tabindex="0"><code>${escaped(JSON.stringify(value, null, 2))}</code></pre>`;
}

function headersOf(contract: Contract): string {
  const wanted = [
    ...(contract.needsIfMatch ? ['If-Match: the ETag of the record as it was read'] : []),
    ...(contract.isIdempotent
      ? ['Idempotency-Key: any fresh text; the same request with it answers once']
      : []),
    ...(contract.takesFile ? ['Content-Type: multipart/form-data with the part "file"'] : []),
  ];
  return wanted.map((line) => `<p><code>${escaped(line)}</code></p>`).join('');
}

function operation(contract: Contract): string {
  const { method, path, name, example } = contract;
  const call = `${method} ${example.params === undefined ? path : addressOf(contract, example)}`;
  const problems = problemsOf(contract)
    .map((code) => `<a href="#problem-${code}">${code}</a>`)
    .join(', ');
  return `<article id="${name}"><h3><code>${method} ${escaped(path)}</code> ${escaped(contract.summary)}</h3>
<p>${escaped(contract.description)}</p><p>For: ${escaped(audienceInWords(contract))}. Answers ${contract.status}; problems: ${problems}.</p>
${headersOf(contract)}<p>Example: <code>${escaped(call)}</code></p>${block('Body', example.body)}${block('Answer', example.answer)}</article>`;
}

function section(tag: string): string {
  const inside = ALL_CONTRACTS.filter((contract) => contract.tag === tag);
  return `<section id="tag-${tag}"><h2>${escaped(tag)}</h2>${inside.map(operation).join('\n')}</section>`;
}

/** The API's description as one page for people: no script, so it reads anywhere. */
export function readingPage(): string {
  const tags = [...new Set(ALL_CONTRACTS.map(({ tag }) => tag))];
  const contents = tags.map((tag) => `<li><a href="#tag-${tag}">${escaped(tag)}</a></li>`).join('');
  const problems = Object.entries(PROBLEM_TABLE)
    .map(
      ([code, { status, title, mend }]) =>
        `<tr id="problem-${code}"><th scope="row"><code>${code}</code></th><td>${status}</td><td>${escaped(title)}</td><td>${escaped(mend)}</td></tr>`,
    )
    .join('');
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>Scantling: the API</title><link rel="stylesheet" href="/api/docs.css"></head>
<body><header><h1>The API</h1><p>The same for programs: <a href="/api/openapi.json">openapi.json</a> (OpenAPI 3.1);
  the form in which numbers show their working: <a href="/api/schemas/figures.json">figures.json</a> (JSON Schema 2020-12).
Send <code>Authorization: Bearer sct_...</code>. Decimals are text; <code>?working=true</code> adds how every figure came about.</p></header>
<nav aria-label="Contents"><ul>${contents}<li><a href="#problems">problems</a></li></ul></nav>
<main>${tags.map(section).join('\n')}
<section id="problems"><h2>problems</h2><table><thead><tr><th scope="col">Code</th><th scope="col">Status</th>
<th scope="col">What</th><th scope="col">What to do</th></tr></thead><tbody>${problems}</tbody></table></section></main></body></html>`;
}

export const READING_PAGE_STYLE = `:root{color-scheme:light dark;font:16px/1.5 system-ui,sans-serif}
body{max-width:60rem;margin:0 auto;padding:1rem}
nav ul{display:flex;flex-wrap:wrap;gap:.25rem 1rem;padding:0;list-style:none}
article{border-top:1px solid;padding-block:.5rem}
pre{overflow:auto;max-height:24rem;padding:.75rem;border:1px solid;font-size:.85rem}
code{font-family:ui-monospace,monospace}
table{border-collapse:collapse;width:100%}
th,td{text-align:start;vertical-align:top;padding:.25rem .5rem;border-bottom:1px solid}
`;
