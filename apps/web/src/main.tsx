import { QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import './styles/tokens.css';
import './styles/base.css';
import './app/shell.css';
import { createQueryClient } from './app/query-client.ts';
import { createAppRouter } from './app/router.tsx';
import { sessionQuery } from './features/sign-in/api/get-session.ts';

const queryClient = createQueryClient(() => {
  queryClient.removeQueries({ queryKey: sessionQuery.queryKey });
  void router.invalidate();
});
const router = createAppRouter(queryClient);

const root = document.getElementById('root');
if (!root) throw new Error('the page has no element "root"');
createRoot(root).render(
  <StrictMode>
    <QueryClientProvider client={queryClient}>
      <RouterProvider router={router} />
    </QueryClientProvider>
  </StrictMode>,
);
