import { Chart, Decimation, LinearScale, LineController, LineElement, PointElement } from 'chart.js';
import type { ChartDataset, Plugin, Point } from 'chart.js';
import { TRACE_S } from '../../session/hearing/recentLevels.ts';
import type { RecentLevels } from '../../session/hearing/recentLevels.ts';
import { levelTick, timeTick } from '../../words/page/strip.ts';
import { stripFlags } from './stripFlags.ts';
import type { LevelPoint } from '../../session/hearing/listeningTypes.ts';

Chart.register(LineController, LineElement, PointElement, LinearScale, Decimation);

/** Room that a flag's label takes, and a ring. */
const LABEL_PX = 26;
const RING_ROOM_PX = 14;
/** What only may be a resonance bears a ring of this radius, and its line is broken. */
const RING_PX = 5;
const BROKEN_PX = [5, 5];

interface Colours {
  ink: string;
  soft: string;
  line: string;
  tone: string;
  wash: string;
  room: string;
}

/** Chart.js behind the strip: three lines over a minute, soundings as bands, flags as labelled lines. */
export class StripChart {
  private readonly chart: Chart<'line', Point[]>;
  private colours: Colours;
  private trace: RecentLevels | null = null;
  private labelAt: (timeS: number) => string = () => '';

  constructor(canvas: HTMLCanvasElement, style: CSSStyleDeclaration) {
    this.colours = coloursOf(style);
    this.chart = new Chart(canvas, {
      type: 'line',
      data: { datasets: [line('all'), line('room'), line('tone')] },
      plugins: [this.eventsPlugin()],
      options: {
        animation: false,
        parsing: false,
        normalized: true,
        responsive: true,
        maintainAspectRatio: false,
        events: [],
        layout: { padding: { top: 20 } },
        scales: {
          x: { type: 'linear', min: -TRACE_S, max: 0, ticks: { stepSize: 10, maxRotation: 0 } },
          y: { type: 'linear', min: -90, max: -10, ticks: { stepSize: 20 } },
        },
      },
    });
    this.recolour(style);
  }

  /** Draws the trace as it stands. @param labelAt  what stands at a flag, by the time of its peak */
  show(trace: RecentLevels, labelAt: (timeS: number) => string): void {
    this.trace = trace;
    this.labelAt = labelAt;
    const end = trace.latest?.timeS ?? 0;
    const [all, room, tone] = this.chart.data.datasets;
    const points = trace.points;
    // A null ends a line; Chart.js wants NaN for that.
    if (all !== undefined) all.data = points.map((point) => ({ x: point.timeS - end, y: point.broadbandDb }));
    if (room !== undefined) room.data = points.map((point) => ({ x: point.timeS - end, y: point.roomDb }));
    if (tone !== undefined) {
      tone.data = points.map((point) => ({ x: point.timeS - end, y: point.toneDb ?? NaN }));
    }
    const y = this.chart.options.scales?.['y'];
    if (y !== undefined) y.min = floorDb(points);
    this.chart.update('none');
  }

  recolour(style: CSSStyleDeclaration): void {
    this.colours = coloursOf(style);
    const { soft, room, tone, line: grid, ink } = this.colours;
    const colours = [soft, room, tone];
    this.chart.data.datasets.forEach((dataset, index) => (dataset.borderColor = colours[index] ?? soft));
    for (const name of ['x', 'y'] as const) {
      const scale = this.chart.options.scales?.[name];
      if (scale === undefined) continue;
      scale.ticks = {
        ...scale.ticks,
        color: ink,
        callback: (value) => (name === 'x' ? timeTick(Number(value)) : levelTick(Number(value))),
      };
      scale.grid = { color: grid };
    }
    this.chart.update('none');
  }

  destroy(): void {
    this.chart.destroy();
  }

  private eventsPlugin(): Plugin<'line'> {
    return {
      id: 'events',
      beforeDatasetsDraw: (chart) => this.drawSoundings(chart as Chart<'line', Point[]>),
      afterDatasetsDraw: (chart) => this.drawFlags(chart as Chart<'line', Point[]>),
    };
  }

  private drawSoundings(chart: Chart<'line', Point[]>): void {
    const { ctx, chartArea, scales } = chart;
    const end = this.trace?.latest?.timeS ?? 0;
    ctx.fillStyle = this.colours.wash;
    for (const sounding of this.trace?.soundings ?? []) {
      const from = Math.max(scales['x']?.getPixelForValue(sounding.startS - end) ?? 0, chartArea.left);
      const to = scales['x']?.getPixelForValue((sounding.endS ?? end) - end) ?? 0;
      if (to > chartArea.left) ctx.fillRect(from, chartArea.top, to - from, chartArea.height);
    }
  }

  private drawFlags(chart: Chart<'line', Point[]>): void {
    const { ctx, chartArea, scales } = chart;
    const end = this.trace?.latest?.timeS ?? 0;
    ctx.strokeStyle = this.colours.ink;
    ctx.fillStyle = this.colours.ink;
    ctx.lineWidth = 2;
    ctx.textAlign = 'center';
    ctx.font = '700 15px sans-serif';
    let freeUntil = Infinity;
    // Newest first: where two stand too near for both labels, the newer one keeps its own.
    for (const { timeS, label, isHollow } of [
      ...stripFlags(this.trace?.resonances ?? [], this.labelAt),
    ].reverse()) {
      const x = scales['x']?.getPixelForValue(timeS - end) ?? 0;
      if (x < chartArea.left) continue;
      ctx.setLineDash(isHollow ? BROKEN_PX : []);
      ctx.beginPath();
      ctx.moveTo(x, chartArea.top);
      ctx.lineTo(x, chartArea.bottom);
      ctx.stroke();
      ctx.setLineDash([]);
      const halfPx = (isHollow ? RING_ROOM_PX : LABEL_PX) / 2;
      if (x + halfPx > freeUntil) continue;
      freeUntil = x - halfPx;
      const labelX = Math.min(x, chart.width - halfPx);
      if (!isHollow) {
        ctx.fillText(label, labelX, chartArea.top - 5);
        continue;
      }
      ctx.beginPath();
      ctx.arc(labelX, chartArea.top - RING_PX - 3, RING_PX, 0, 2 * Math.PI);
      ctx.stroke();
    }
  }
}

/** Lower end of the scale: as low as the room goes, in steps of 20 dB so that the scale rarely moves. */
function floorDb(points: readonly LevelPoint[]): number {
  const lowest = points.reduce((low, point) => Math.min(low, point.roomDb), -70);
  return Math.max(Math.floor((lowest - 2) / 20) * 20 - 10, -150);
}

function line(kind: 'all' | 'room' | 'tone'): ChartDataset<'line', Point[]> {
  return {
    data: [],
    pointRadius: 0,
    tension: 0,
    spanGaps: false,
    borderWidth: kind === 'tone' ? 2.5 : 1.5,
    borderDash: kind === 'tone' ? [] : kind === 'room' ? [6, 4] : [2, 3],
  };
}

function coloursOf(style: CSSStyleDeclaration): Colours {
  const token = (name: string): string => style.getPropertyValue(name).trim();
  return {
    ink: token('--ink'),
    soft: token('--ink-soft'),
    line: token('--line'),
    tone: token('--tone'),
    wash: token('--tone-wash'),
    room: token('--room'),
  };
}
