import { getCostSheet, getDesignPictures, getEnquiry, getEnquiryPictures } from '@scantling/contracts';
import { queryOptions } from '@tanstack/react-query';
import { callApi } from '../../../lib/api-client.ts';

/** Pictures that are there already and may be shown on a quote. */
export interface OfferedPictures {
  /** What they are of: the name of a design or of the enquiry. */
  readonly from: string;
  readonly pictures: readonly { readonly sha256: string; readonly alternativeText: string }[];
}

/** The pictures of the designs that a quote's cost sheets are of, and of the enquiry it answers. */
export function offeredPicturesQuery(costSheetIds: readonly string[], enquiryId: string | null) {
  const ids = [...new Set(costSheetIds)].sort();
  return queryOptions({
    queryKey: ['quotes', 'offered-pictures', ids, enquiryId],
    queryFn: async ({ signal }): Promise<readonly OfferedPictures[]> => {
      const sheets = await Promise.all(
        ids.map(async (id) => (await callApi(getCostSheet, { params: { id }, signal })).value),
      );
      const designs = new Map(sheets.map(({ designId, designName }) => [designId, designName]));
      const ofDesigns = [...designs].map(async ([id, from]) => {
        const { value } = await callApi(getDesignPictures, { params: { id }, signal });
        return { from, pictures: value.items };
      });
      const asked = enquiryId === null ? null : { params: { id: enquiryId }, signal };
      const ofEnquiry =
        asked === null
          ? []
          : [
              {
                from: (await callApi(getEnquiry, asked)).value.name,
                pictures: (await callApi(getEnquiryPictures, asked)).value.items,
              },
            ];
      return [...(await Promise.all(ofDesigns)), ...ofEnquiry].filter(({ pictures }) => pictures.length > 0);
    },
  });
}
