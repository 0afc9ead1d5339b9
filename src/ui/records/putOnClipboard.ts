import type { CopiedTable } from '../../report/copyTable.ts';

/**
 * Puts a table on the clipboard, as text and where the browser can as an HTML table.
 * @returns whether the browser allowed it
 */
export async function putOnClipboard(table: CopiedTable): Promise<boolean> {
  // On plain http there is no clipboard at all.
  const clipboard = navigator.clipboard as Clipboard | undefined;
  if (clipboard === undefined) return false;
  try {
    if (typeof ClipboardItem === 'undefined') await clipboard.writeText(table.text);
    else {
      const kinds = {
        'text/plain': asBlob(table.text, 'text/plain'),
        'text/html': asBlob(table.html, 'text/html'),
      };
      await clipboard.write([new ClipboardItem(kinds)]);
    }
    return true;
  } catch {
    return false;
  }
}

function asBlob(text: string, type: string): Blob {
  return new Blob([text], { type });
}
