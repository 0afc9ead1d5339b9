/*
 * What the views of measurement and check show only once something is heard or a length is typed.
 */
import '../capture/trustElement.ts';
import './resultElement.ts';
import './warningsElement.ts';
