import './theme.css';
import { applyTheme } from './themeChoice.ts';
import { AppElement } from './appElement.ts';
import { startLanguage } from './languageChoice.ts';

applyTheme(document.documentElement);
// The page is the only element that stands in the document: it comes to life when there is something to say.
void startLanguage(document).then(() => customElements.define('bench-app', AppElement));
