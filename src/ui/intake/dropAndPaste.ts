import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** What is done with what comes in. */
export interface DropHandlers {
  onFiles(files: readonly File[]): void;
  onText(text: string): void;
}

/** Takes files that are dropped anywhere on the page, and tables that are pasted outside of a field. */
export class DropAndPaste implements ReactiveController {
  /** Whether files are being dragged over the page. */
  isOver = false;

  constructor(
    private readonly host: ReactiveControllerHost,
    private readonly handlers: DropHandlers,
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    addEventListener('dragover', this.onDragOver);
    addEventListener('dragleave', this.onDragLeave);
    addEventListener('drop', this.onDrop);
    addEventListener('paste', this.onPaste);
  }

  hostDisconnected(): void {
    removeEventListener('dragover', this.onDragOver);
    removeEventListener('dragleave', this.onDragLeave);
    removeEventListener('drop', this.onDrop);
    removeEventListener('paste', this.onPaste);
  }

  private readonly onDragOver = (event: DragEvent): void => {
    if (!holdsFiles(event.dataTransfer)) return;
    // Without this the browser would leave the page and open the file itself.
    event.preventDefault();
    this.setOver(true);
  };

  private readonly onDragLeave = (event: DragEvent): void => {
    // Only when the pointer leaves the window, not one of its elements.
    if (event.relatedTarget === null) this.setOver(false);
  };

  private readonly onDrop = (event: DragEvent): void => {
    if (!holdsFiles(event.dataTransfer)) return;
    event.preventDefault();
    this.setOver(false);
    const files = [...(event.dataTransfer?.files ?? [])];
    if (files.length > 0) this.handlers.onFiles(files);
  };

  private readonly onPaste = (event: ClipboardEvent): void => {
    const target = event.composedPath().at(0);
    if (target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement) return;
    const files = [...(event.clipboardData?.files ?? [])];
    const text = event.clipboardData?.getData('text/plain') ?? '';
    // A word or an address that happens to be on the clipboard is no table.
    const isTable = /[\t\n]/.test(text.trim());
    if (isTable) this.handlers.onText(text);
    else if (files.length > 0) this.handlers.onFiles(files);
  };

  private setOver(isOver: boolean): void {
    if (this.isOver === isOver) return;
    this.isOver = isOver;
    this.host.requestUpdate();
  }
}

function holdsFiles(data: DataTransfer | null): boolean {
  return data?.types.includes('Files') === true;
}
