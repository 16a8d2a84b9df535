import { type QuotingWorkshop, quotedLines } from './quoting-workshop.ts';

/** Requests of a maker and a reader, and drafts to begin with. `workshop` is asked when a request is made. */
export function quoteCalls(workshop: () => QuotingWorkshop) {
  const maker = (version?: number) => ({
    ...workshop().as('maker'),
    ...(version === undefined ? {} : { 'if-match': `"${version}"` }),
  });
  const get = (path: string) => workshop().request.get(path).set(workshop().as('read-only'));
  const post = (path: string, body: object = {}, version?: number) =>
    workshop()
      .request.post(path)
      .set(maker(version))
      .send(Object.keys(body).length === 0 ? undefined : body);

  /** A quote with the usual lines, still a draft. @returns the revision */
  const drafted = async (title: string, clientId = workshop().clientId) => {
    const { body: quote } = await post('/api/quotes', { title, clientId, enquiryId: null }).expect(201);
    const { body: revision } = await get(`/api/quote-revisions/${quote.currentRevisionId}`).expect(200);
    const draft = { ...revision.draft, lines: quotedLines(workshop().costSheetId) };
    const { body } = await workshop()
      .request.put(`/api/quote-revisions/${revision.id}`)
      .set(maker(revision.version))
      .send({ title, clientId, enquiryId: null, draft })
      .expect(200);
    return body;
  };
  return { maker, get, post, drafted };
}
