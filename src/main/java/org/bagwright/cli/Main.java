package org.bagwright.cli;

final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.out.println("hi");
    }
}
