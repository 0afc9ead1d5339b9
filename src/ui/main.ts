import './theme.css';
import { applyTheme } from './themeChoice.ts';
import './appElement.ts';

applyTheme(document.documentElement);
