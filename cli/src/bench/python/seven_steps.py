"""The seven steps of SevenSteps.java with Python's OpenCV: seven_steps.py PICTURE X1,Y1 X2,Y2 X3,Y3 X4,Y4"""
import sys

import cv2
import numpy

WIDTH, HEIGHT = 1200, 1800


def main():
    corners = numpy.float32([[float(c) for c in corner.split(",")] for corner in sys.argv[2:6]])
    cv2.setNumThreads(1)
    photo = cv2.imread(sys.argv[1])
    upright = numpy.float32([[0, 0], [WIDTH, 0], [WIDTH, HEIGHT], [0, HEIGHT]])
    view = cv2.getPerspectiveTransform(corners, upright)
    strip = cv2.warpPerspective(photo, view, (WIDTH, HEIGHT), flags=cv2.INTER_LINEAR)
    lab = cv2.cvtColor(strip, cv2.COLOR_BGR2Lab)
    blurred = cv2.GaussianBlur(lab, (0, 0), 3)
    background = cv2.blur(blurred, (241, 241))
    difference = cv2.absdiff(blurred, background)
    most = cv2.max(difference[:, :, 1], difference[:, :, 2])
    stained = cv2.threshold(most, 8, 255, cv2.THRESH_BINARY)[1]
    print(cv2.connectedComponentsWithStats(stained)[0])


main()
