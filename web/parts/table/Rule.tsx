import { memo } from 'react';
import type { Unit } from '../../../src/units/index.ts';
import { hasRoom, rule } from './ticks.ts';
import type { Screen, View } from './view.ts';

/** How far the rule reaches into the table, px. */
export const ruleBreadth = 30;

interface RuleProps {
  readonly view: View;
  readonly screen: Screen;
  readonly unit: Unit;
}

/** The rule along the top and left edge of the table. What it shows can be read off elsewhere, so it is hidden from screen readers. */
export const Rule = memo(({ view, screen, unit }: RuleProps) => {
  const across = rule(view.left + ruleBreadth / view.scale, view.left + screen.width / view.scale, view.scale, unit);
  const down = rule(view.top + ruleBreadth / view.scale, view.top + screen.height / view.scale, view.scale, unit);
  return (
    <g className="rule">
      <rect x={0} y={0} width={screen.width} height={ruleBreadth} />
      <rect x={0} y={0} width={ruleBreadth} height={screen.height} />
      {across.map((tick) => {
        const { mm, reach, number } = tick;
        const x = (mm - view.left) * view.scale;
        return (
          <g key={mm}>
            <line x1={x} x2={x} y1={ruleBreadth - reach * 12} y2={ruleBreadth} />
            {hasRoom(tick, x, ruleBreadth, screen.width) && (
              <text x={x} y={15} textAnchor="middle">
                {number}
              </text>
            )}
          </g>
        );
      })}
      {down.map((tick) => {
        const { mm, reach, number } = tick;
        const y = (mm - view.top) * view.scale;
        return (
          <g key={mm}>
            <line y1={y} y2={y} x1={ruleBreadth - reach * 12} x2={ruleBreadth} />
            {hasRoom(tick, y, ruleBreadth, screen.height) && (
              <text x={15} y={y} textAnchor="middle" transform={`rotate(-90 15 ${y})`}>
                {number}
              </text>
            )}
          </g>
        );
      })}
      <text className="rule-unit" x={5} y={21}>
        {unit === 'in' ? '″' : 'cm'}
      </text>
    </g>
  );
});
