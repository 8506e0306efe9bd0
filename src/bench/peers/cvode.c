/*
 * Carbon in a strip of metal held at one temperature, by CVODE (BDF, Newton, banded Jacobian
 * written out). Reads a problem as Peers.java writes it; for each tolerance prints name, tolerance,
 * seconds of one heat and the carbon at its end.
 */
#include <cvode/cvode.h>
#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <sunlinsol/sunlinsol_band.h>
#include <sunmatrix/sunmatrix_band.h>
#include <time.h>

typedef struct {
  double dilute, k, c0, c1, c2, ferrite, ferrite_most, least, most;
  double p1, p2, p3, q0, q1, q2, q3, below, base, above;
} Law;

typedef struct {
  int n, seam;
  double seconds, edge;
  Law law[2];
  double *h, *start, *potential, *slope, *flux, *by_left, *by_right;
  double left, right;
} Problem;

static double integral(const Law *l, double y) {
  return exp(l->k * y) * (l->q0 + y * (l->q1 + y * (l->q2 + y * l->q3))) - l->q0;
}

static void prepare(Law *l) {
  l->p1 = l->c1;
  l->p2 = 2 * l->c2 - l->c1;
  l->p3 = -2 * l->c2;
  l->q3 = l->dilute * l->p3 / l->k;
  l->q2 = (l->dilute * l->p2 - 3 * l->q3) / l->k;
  l->q1 = (l->dilute * l->p1 - 2 * l->q2) / l->k;
  l->q0 = (l->dilute - l->q1) / l->k;
  l->below = l->ferrite * l->ferrite_most;
  l->base = l->below - integral(l, l->least);
  l->above = l->base + integral(l, l->most);
}

static void evaluate(const Law *l, double y, double *potential, double *slope) {
  if (y >= l->least && y > l->ferrite_most && y < l->most) {
    double e = exp(l->k * y);
    *potential = l->base - l->q0 + e * (l->q0 + y * (l->q1 + y * (l->q2 + y * l->q3)));
    *slope = l->dilute * e * (1 + y * (l->p1 + y * (l->p2 + y * l->p3)));
  } else if (y <= l->ferrite_most) {
    double d = l->ferrite_most > 0 ? l->ferrite : l->dilute;
    *potential = d * y;
    *slope = d;
  } else {
    *potential = y < l->least ? l->below : l->above;
    *slope = 0;
  }
}

static double ln_activity(const Law *l, double y) {
  return log(y / (1 - y)) + l->c0 + y * (l->c1 + y * l->c2);
}

static double ln_slope(const Law *l, double y) {
  return 1 / (y * (1 - y)) + l->c1 + 2 * l->c2 * y;
}

/* equal activity and equal flux on both sides of the seam, all austenite */
static void seam(Problem *p, int f) {
  const Law *l = &p->law[0], *r = &p->law[1];
  double el = 2 / p->h[f - 1], er = 2 / p->h[f];
  for (int i = 0; i < 30; i++) {
    double pl, sl, pr, sr;
    evaluate(l, p->left, &pl, &sl);
    evaluate(r, p->right, &pr, &sr);
    double lns = ln_slope(l, p->left), rns = ln_slope(r, p->right);
    double ml = el * sl / lns, mr = er * sr / rns;
    double step = ln_activity(r, p->right) - ln_activity(l, p->left);
    double from_left = el * (p->potential[f - 1] - pl);
    double from_right = er * (p->potential[f] - pr);
    double rise = (from_left + from_right + mr * step) / (ml + mr);
    double dl = rise / lns, dr = (rise - step) / rns;
    p->left += dl;
    p->right += dr;
    if (fabs(dl) <= 1e-5 * p->left && fabs(dr) <= 1e-5 * p->right) {
      p->flux[f] = from_left - el * sl * dl;
      p->by_left[f] = el * p->slope[f - 1] * mr / (ml + mr);
      p->by_right[f] = -er * p->slope[f] * ml / (ml + mr);
      return;
    }
  }
}

static void fluxes(Problem *p, const double *y) {
  int n = p->n;
  for (int i = 0; i < n; i++) {
    evaluate(&p->law[p->seam > 0 && i >= p->seam], y[i], &p->potential[i], &p->slope[i]);
  }
  for (int f = 1; f < n; f++) {
    if (f == p->seam) {
      seam(p, f);
    } else {
      double r = 2 / (p->h[f - 1] + p->h[f]);
      p->flux[f] = r * (p->potential[f - 1] - p->potential[f]);
      p->by_left[f] = r * p->slope[f - 1];
      p->by_right[f] = -r * p->slope[f];
    }
  }
  p->flux[0] = p->by_right[0] = p->flux[n] = p->by_left[n] = 0;
  if (p->edge >= 0 && y[0] > p->edge) {
    double outside, unused, r = 2 / p->h[0];
    evaluate(&p->law[0], p->edge, &outside, &unused);
    p->flux[0] = r * (outside - p->potential[0]);
    p->by_right[0] = -r * p->slope[0];
  }
}

static int rhs(realtype t, N_Vector yv, N_Vector dv, void *data) {
  Problem *p = data;
  double *d = NV_DATA_S(dv);
  fluxes(p, NV_DATA_S(yv));
  for (int i = 0; i < p->n; i++) d[i] = (p->flux[i] - p->flux[i + 1]) / p->h[i];
  return 0;
}

static int jacobian(realtype t, N_Vector yv, N_Vector f, SUNMatrix j, void *data, N_Vector a,
                    N_Vector b, N_Vector c) {
  Problem *p = data;
  fluxes(p, NV_DATA_S(yv));
  for (int i = 0; i < p->n; i++) {
    if (i > 0) SM_ELEMENT_B(j, i, i - 1) = p->by_left[i] / p->h[i];
    SM_ELEMENT_B(j, i, i) = (p->by_right[i] - p->by_left[i + 1]) / p->h[i];
    if (i + 1 < p->n) SM_ELEMENT_B(j, i, i + 1) = -p->by_right[i + 1] / p->h[i];
  }
  return 0;
}

static int solve(Problem *p, double tolerance, double *end) {
  SUNContext context;
  SUNContext_Create(NULL, &context);
  N_Vector y = N_VNew_Serial(p->n, context);
  for (int i = 0; i < p->n; i++) NV_Ith_S(y, i) = p->start[i];
  p->left = p->start[p->seam > 0 ? p->seam - 1 : 0];
  p->right = p->start[p->seam];
  void *cv = CVodeCreate(CV_BDF, context);
  CVodeInit(cv, rhs, 0, y);
  CVodeSStolerances(cv, tolerance, tolerance * 0.0047);
  CVodeSetUserData(cv, p);
  CVodeSetMaxNumSteps(cv, 2000000);
  SUNMatrix m = SUNBandMatrix(p->n, 1, 1, context);
  SUNLinearSolver s = SUNLinSol_Band(y, m, context);
  CVodeSetLinearSolver(cv, s, m);
  CVodeSetJacFn(cv, jacobian);
  CVodeSetStopTime(cv, p->seconds);
  realtype t;
  int flag = CVode(cv, p->seconds, y, &t, CV_NORMAL);
  for (int i = 0; i < p->n; i++) end[i] = NV_Ith_S(y, i);
  CVodeFree(&cv);
  SUNLinSolFree(s);
  SUNMatDestroy(m);
  N_VDestroy(y);
  SUNContext_Free(&context);
  return flag;
}

static double now(void) {
  struct timespec t;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
  return t.tv_sec + 1e-9 * t.tv_nsec;
}

int main(int argc, char **argv) {
  const char *name = argv[1];
  FILE *in = fopen(argv[2], "r");
  Problem p;
  if (!in || fscanf(in, "%d %lf %lf %d", &p.n, &p.seconds, &p.edge, &p.seam) != 4) return 1;
  for (int m = 0; m < 2; m++) {
    Law *l = &p.law[m];
    if (fscanf(in, "%lf %lf %lf %lf %lf %lf %lf %lf %lf", &l->dilute, &l->k, &l->c0, &l->c1, &l->c2,
               &l->ferrite, &l->ferrite_most, &l->least, &l->most) != 9) return 1;
    prepare(l);
  }
  double *all = calloc(8 * (p.n + 1), sizeof(double));
  double **parts[] = {&p.h, &p.start, &p.potential, &p.slope, &p.flux, &p.by_left, &p.by_right};
  for (int i = 0; i < 7; i++) *parts[i] = all + i * (p.n + 1);
  double *end = all + 7 * (p.n + 1);
  for (int i = 0; i < p.n; i++) if (fscanf(in, "%lf %lf", &p.h[i], &p.start[i]) != 2) return 1;
  double tolerances[] = {1e-2, 1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-10};
  for (int i = 0; i < 7; i++) {
    double best = 1e300, spent = 0;
    int flag = 0;
    do {
      double from = now();
      flag = solve(&p, tolerances[i], end);
      double took = now() - from;
      best = took < best ? took : best;
      spent += took;
    } while (spent < 0.5);
    if (flag < 0) continue;
    printf("%s %g %.9g 0", name, tolerances[i], best);
    for (int j = 0; j < p.n; j++) printf(" %.17g", end[j]);
    printf("\n");
  }
  return 0;
}
