import { narrow } from './page.ts';
import { everyPage } from './pages.ts';

everyPage('a phone', narrow);
