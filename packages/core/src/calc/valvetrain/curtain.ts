import type { Angle, Area, Length } from '../../quantity/index.js';

/**
 * Flow area of an open valve by its geometry [m²]: the frustum between seat and valve, the cylinder once it is larger, never more than the throat.
 *
 *   low lift: π·L·cos β·(Di + L·sin β·cos β);  high lift: π·Dm·√((L − w·tan β)² + w²);  most: (π/4)·(Dp² − Ds²)
 *
 * L `lift`, Di `innerSeat` inner seat diameter, w `seatWidth` measured across the seat radially, β `seatAngle` from the plane of the seat,
 * Dp `port`, Ds `stem` [m]. Dm = Di + w. The first holds while w/(sin β·cos β) > L.
 * Source: J. B. Heywood, Internal Combustion Engine Fundamentals, section 6.3, from memory.
 */
export function valveArea(lift: Length, innerSeat: Length, seatWidth: Length, seatAngle: Angle, throat: Area): Area {
  const [sin, cos] = [Math.sin(seatAngle), Math.cos(seatAngle)];
  const frustum = Math.PI * lift * cos * (innerSeat + lift * sin * cos);
  const mean = innerSeat + seatWidth;
  const beyond = Math.PI * mean * Math.hypot(lift - (seatWidth * sin) / cos, seatWidth);
  const open = seatWidth / (sin * cos) > lift ? frustum : beyond;
  return Math.min(open, throat) as Area;
}
