import './no-written-code.ts';
import './styles/type.css';
import './styles/base.css';
import './styles/table.css';
import './styles/verbs.css';
import './styles/fields.css';
import './styles/tables.css';
import './styles/standing.css';
import './styles/pages.css';
import './styles/make.css';
import './styles/envelopes.css';
import './styles/fitting.css';
import './styles/layout.css';
import './styles/print.css';

// Its own import: what a page is made of may be loaded before what is written above it runs.
void import('./page.tsx').then(({ showPage }) => showPage());
