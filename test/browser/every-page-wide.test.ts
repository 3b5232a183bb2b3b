import { wide } from './page.ts';
import { everyPage } from './pages.ts';

everyPage('a desk', wide);
