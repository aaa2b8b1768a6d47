"""The equations of one preparation, written a second time and in another way than the program: as conservation of
volume and of enthalpy, whose slopes are taken by complex steps, and solved for warming and gas leaving as two linear
equations. SI units."""

import numpy
from scipy.integrate import solve_ivp
from scipy.optimize import fsolve

R = 8.31446261815324  # CODATA 2018
# Molar volumes 18.015 g/mol over 0.9982 g/cm3 and 34.014 g/mol over 1.45 g/cm3; heat capacities, heat of vaporisation
# and of decomposition as the program states them.
V_WATER, V_PEROXIDE = 18.015e-6 / 0.9982, 34.014e-6 / 1.45
C_WATER, C_GAS, C_VAPOUR = 4.18 * 18.015, 29.1, 33.6
L0, Q, ZERO = 44_004.0, 94_660.0, 298.15


def saturation(t):
    """IAPWS SR1-86(1992), equation 1: vapour pressure of water."""
    a = [-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502]
    tau = 1 - t / 647.096
    powers = [1, 1.5, 3, 3.5, 4, 7.5]
    return 22.064e6 * numpy.exp(647.096 / t * sum(c * tau**n for c, n in zip(a, powers)))


class Preparation:
    """A flask whose gas leaves by the tube at a constant pressure. State: P, W, T, O, N, O out, N out, vapour out, heat
    out."""

    def __init__(self, space, pressure, room, loss, glass, rate):
        self.space, self.pressure, self.room, self.loss, self.glass = space, pressure, room, loss, glass
        self.rate = rate  # of T and the concentration

    def free(self, x):
        return self.space - V_WATER * x[1] - V_PEROXIDE * x[0]

    def surplus(self, x):
        """Dry gas less what the free volume holds: always 0."""
        return x[3] + x[4] - (self.pressure - saturation(x[2])) * self.free(x) / (R * x[2])

    def enthalpy(self, x):
        p, w, t, o, n = x[:5]
        vapour = saturation(t) * self.free(x) / (R * t)
        theta = t - ZERO
        sensible = (w - vapour + p) * C_WATER + (o + n) * C_GAS + vapour * C_VAPOUR + self.glass
        return sensible * theta + Q * p + L0 * vapour

    @staticmethod
    def slopes(f, x):
        step = 1e-30
        return numpy.array([f(x[:5] + 1j * step * unit).imag / step for unit in numpy.eye(5)])

    def derivative(self, x, p_in=0.0, w_in=0.0, t_in=ZERO):
        p, w, t, o, n = x[:5]
        rate = self.rate(t, p / (V_WATER * w + V_PEROXIDE * p))
        y = saturation(t) / (self.pressure - saturation(t))
        theta, share = t - ZERO, o / (o + n)
        carried = theta * C_GAS + y * (theta * C_VAPOUR + L0)
        lost = self.loss * (t - self.room)
        came = (p_in + w_in) * C_WATER * (t_in - ZERO) + Q * p_in
        # What changes without warming and without gas leaving, and what each of these two adds.
        still = numpy.array([p_in - rate, w_in + rate, 0, rate / 2, 0])
        leaving = numpy.array([0, -y, 0, -share, -(1 - share)])
        a, b = self.slopes(self.surplus, x), self.slopes(self.enthalpy, x)
        matrix = [[a[2], a @ leaving], [b[2], b @ leaving + carried]]
        warming, out = numpy.linalg.solve(matrix, [-(a @ still), came - lost - b @ still])
        inside = still + leaving * out
        inside[2] = warming
        return numpy.concatenate([inside, [out * share, out * (1 - share), y * out, out * carried + lost]])

    def poured(self, x, p_in, w_in, t_in):
        """The state after a portion: what it displaces leaves at the temperature that comes of it."""
        came = (p_in + w_in) * C_WATER * (t_in - ZERO) + Q * p_in
        share = x[3] / (x[3] + x[4])

        def after(t, out):
            y = saturation(t) / (self.pressure - saturation(t))
            gone = numpy.array([share * out, (1 - share) * out, y * out])
            carried = out * ((t - ZERO) * C_GAS + y * ((t - ZERO) * C_VAPOUR + L0))
            now = [x[0] + p_in, x[1] + w_in - gone[2], t, x[3] - gone[0], x[4] - gone[1]]
            return numpy.array([*now, *(x[5:8] + gone), x[8] + carried]), carried

        def off(unknown):
            now, carried = after(unknown[0], unknown[1] * 1e-3)
            return [self.surplus(now) * 1e3, (self.enthalpy(now) + carried - self.enthalpy(x) - came) / 1e3]

        found, _, worked, message = fsolve(off, [x[2], 0.2], xtol=1e-14, full_output=True)
        assert worked == 1 or numpy.abs(off(found)).max() < 1e-12, message
        return after(found[0], found[1] * 1e-3)[0]

    def follow(self, x, start, end, inflow=(), method="Radau", rtol=1e-10):
        """From one time to another; amounts are held to 1e-10 of a hundredth of a mole as well."""
        atol = rtol * numpy.array([1e-2, 1e-2, 1.0, 1e-2, 1e-2, 1e-2, 1e-2, 1e-2, 10.0])
        done = solve_ivp(
            lambda _, x: self.derivative(x, *inflow), (start, end), x, method=method, rtol=rtol, atol=atol
        )
        assert done.success, done.message
        return done.y[:, -1]


def mixed(volume_cm3, mol_per_dm3):
    """Peroxide and water of a volume of solution."""
    peroxide = volume_cm3 * 1e-3 * mol_per_dm3
    return peroxide, (volume_cm3 * 1e-6 - peroxide * V_PEROXIDE) / V_WATER


def first_state(space, pressure, heel_cm3, room):
    """Air and water, nothing added."""
    dry = (pressure - saturation(room)) * (space - heel_cm3 * 1e-6) / (R * room)
    return numpy.array([0, heel_cm3 * 1e-6 / V_WATER, room, 0.21 * dry, 0.79 * dry, 0, 0, 0, 0])


def arrhenius(t, activation):
    return numpy.exp(-activation / R * (1 / t - 1 / 293.15))
