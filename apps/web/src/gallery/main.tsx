import { createRootRoute, createRoute, createRouter, RouterProvider } from '@tanstack/react-router';
import { createRoot } from 'react-dom/client';
import '../styles/tokens.css';
import '../styles/base.css';
import '../app/shell.css';
import { IndexStrip } from '../app/index-strip.tsx';
import { ThemeChoice } from '../app/theme-choice.tsx';
import { Toasts } from '../components/toast.tsx';
import { ControlsGallery } from './controls-gallery.tsx';
import { FiguresGallery } from './figures-gallery.tsx';

// Served by `vite` in development only: the production build starts from index.html alone.
const galleryRoot = createRootRoute({
  validateSearch: (search: Record<string, unknown>): { figure?: string | undefined } =>
    search.figure === undefined ? {} : { figure: String(search.figure) },
});
const page = createRoute({
  getParentRoute: () => galleryRoot,
  path: '/gallery.html',
  component: () => (
    <>
      <IndexStrip>
        <ThemeChoice />
      </IndexStrip>
      <main className="page">
        <FiguresGallery />
        <ControlsGallery />
      </main>
      <Toasts />
    </>
  ),
});
const router = createRouter({ routeTree: galleryRoot.addChildren([page]) });

const root = document.getElementById('root');
if (!root) throw new Error('the page has no element "root"');
createRoot(root).render(<RouterProvider router={router} />);
