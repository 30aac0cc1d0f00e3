/*
 * The arithmetic of calc/valvetrain/cycle-gaps.ts in C: piston, lift and room of both valves at many crank angles.
 *
 *   motion RUNS R L E FROM STEP COUNT  then for each of two valves  PEAK HALF P Q R NOSE ANGLE TOP
 *
 * Prints the median time of a run in milliseconds, the sum of all rooms and the least one, as JSON.
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

#define VALVES 2
#define MOST 100000

struct crank { double radius, rod, offset; };
struct row { double from, step; int count; };
struct valve { double peak, half, p, q, r, nose, angle, top; };

static double drops[MOST], lifts[VALVES][MOST], gaps[VALVES][MOST];

static void piston(struct crank g, struct row a) {
  double top = sqrt((g.rod + g.radius) * (g.rod + g.radius) - g.offset * g.offset);
  double start = asin(g.offset / (g.rod + g.radius)) + a.from;
  for (int at = 0; at < a.count; at++) {
    double angle = start + at * a.step;
    double sideways = g.radius * sin(angle) - g.offset;
    drops[at] = top - (g.radius * cos(angle) + sqrt(g.rod * g.rod - sideways * sideways));
  }
}

static void lobe(struct valve v, struct row a, double *lift) {
  double p = v.p, q = v.q, r = v.r;
  double c2 = (-p * q * r) / ((p - 2) * (q - 2) * (r - 2));
  double cp = (2 * q * r) / ((p - 2) * (q - p) * (r - p));
  double cq = (-2 * p * r) / ((q - 2) * (q - p) * (r - q));
  double cr = (2 * p * q) / ((r - 2) * (r - p) * (r - q));
  for (int at = 0; at < a.count; at++) {
    double x = fabs(a.from + at * a.step - v.nose) / v.half;
    if (x >= 1) {
      lift[at] = 0;
      continue;
    }
    double l = log(x);
    double upper = cp * exp(p * l) + cq * exp(q * l) + cr * exp(r * l);
    lift[at] = v.peak * (1 + c2 * x * x + upper);
  }
}

static void rooms(struct valve v, struct row a, const double *lift, double *gap) {
  double per = cos(v.angle);
  for (int at = 0; at < a.count; at++) gap[at] = v.top + drops[at] * per - lift[at];
}

static double milliseconds(void) {
  struct timespec now;
  clock_gettime(CLOCK_MONOTONIC, &now);
  return now.tv_sec * 1e3 + now.tv_nsec / 1e6;
}

static int rising(const void *a, const void *b) {
  double x = *(const double *)a, y = *(const double *)b;
  return (x > y) - (x < y);
}

int main(int argc, char **argv) {
  if (argc != 8 + 8 * VALVES) return 2;
  double n[8 + 8 * VALVES];
  for (int i = 1; i < argc; i++) n[i] = atof(argv[i]);
  int runs = (int)n[1];
  struct crank g = {n[2], n[3], n[4]};
  struct row a = {n[5], n[6], (int)n[7]};
  if (runs < 1 || a.count < 1 || a.count > MOST) return 2;
  struct valve v[VALVES];
  for (int k = 0; k < VALVES; k++) {
    const double *m = n + 8 + 8 * k;
    v[k] = (struct valve){m[0], m[1], m[2], m[3], m[4], m[5], m[6], m[7]};
  }
  double *times = malloc(runs * sizeof *times);
  for (int run = 0; run < runs; run++) {
    double start = milliseconds();
    piston(g, a);
    for (int k = 0; k < VALVES; k++) lobe(v[k], a, lifts[k]);
    for (int k = 0; k < VALVES; k++) rooms(v[k], a, lifts[k], gaps[k]);
    times[run] = milliseconds() - start;
  }
  qsort(times, runs, sizeof *times, rising);
  double sum = 0, least = gaps[0][0];
  for (int k = 0; k < VALVES; k++)
    for (int at = 0; at < a.count; at++) {
      sum += gaps[k][at];
      if (gaps[k][at] < least) least = gaps[k][at];
    }
  printf("{\"ms\":%.6f,\"sum\":%.17g,\"least\":%.17g}\n", times[runs / 2], sum, least);
  return 0;
}
