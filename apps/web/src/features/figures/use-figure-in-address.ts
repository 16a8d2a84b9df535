import { useNavigate, useSearch } from '@tanstack/react-router';

export interface FigureInAddress {
  readonly id: string | null;
  readonly show: (id: string | null) => void;
}

/** The open figure lives in the address (`?figure=`), so that a working can be sent to somebody and Back closes it. */
export function useFigureInAddress(): FigureInAddress {
  const search = useSearch({ strict: false });
  const navigate = useNavigate();
  return {
    id: search.figure ?? null,
    show: (id) => {
      void navigate({
        to: '.',
        search: (before) => ({ ...before, figure: id ?? undefined }),
        resetScroll: false,
      });
    },
  };
}
