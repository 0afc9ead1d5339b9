/*
 * What the view of the measurement shows only once something is heard or a length is typed.
 */
import './resultElement.ts';
import './warningsElement.ts';
