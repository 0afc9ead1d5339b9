import type { LaterWords } from '../../catalogue.ts';

export const homeScreen: LaterWords['homeScreen'] = {
  advice:
    'Auf iPhone und iPad löscht der Browser, was diese Seite gespeichert hat, wenn du sie sieben Tage lang nicht öffnest. Eine App auf dem Home-Bildschirm verliert ihre Daten so nicht, aber ihre Ablage ist am Anfang leer. Füge diese Seite also zuerst zum Home-Bildschirm hinzu (Teilen, Zum Home-Bildschirm) und arbeite dort. Was du hier gemessen hast, speichere als Datei.',
  save: 'Datei speichern',
  read: 'Gelesen',
};
