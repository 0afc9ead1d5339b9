import './theme.css';
import { applyTheme } from './themeChoice.ts';
import './benchApp.ts';

applyTheme(document.documentElement);
